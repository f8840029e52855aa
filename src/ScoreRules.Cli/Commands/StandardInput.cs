using System.Security.Cryptography;
using System.Text;
using ScoreRules.Houses;

namespace ScoreRules.Cli.Commands;

/// <summary>Rule text from standard input, as a house of one file.</summary>
internal static class StandardInput
{
    /// <summary>The house; the shared folder is that of the current folder.</summary>
    public static HouseSources Read(string text) =>
        HouseFolder.WithShared(new HouseFile("(standard input)", text, Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text))), IsSpreadsheet: false));
}
