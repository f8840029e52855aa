using System.Text;
using ScoreRules.Houses;

namespace ScoreRules.Cli.Files;

/// <summary>Writes a file whole or not at all: beside its place first, then moved there.</summary>
internal static class WholeFile
{
    /// <summary>Writes text as UTF-8, replacing what is there.</summary>
    /// <exception cref="HouseException">It cannot be written.</exception>
    public static void Write(string path, string text) => Put(path, beside => File.WriteAllText(beside, text, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false)));

    /// <summary>Has a file made beside its place, then moves it there.</summary>
    /// <exception cref="HouseException">It cannot be made or moved.</exception>
    public static void Put(string path, Action<string> make)
    {
        if (Directory.Exists(path))
        {
            throw new HouseException($"\"{path}\" is a folder. Name a file in it.");
        }

        var full = Path.GetFullPath(path);
        var beside = Path.Combine(Path.GetDirectoryName(full)!, $".{Path.GetFileName(full)}.{Environment.ProcessId.ToString(System.Globalization.CultureInfo.InvariantCulture)}.part");
        try
        {
            make(beside);
            File.Move(beside, full, overwrite: true);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            throw new HouseException($"\"{path}\" cannot be written: {problem.Message.Replace(beside, path, StringComparison.Ordinal)}", problem);
        }
        finally
        {
            Remove(beside);
        }
    }

    private static void Remove(string beside)
    {
        if (File.Exists(beside))
        {
            File.Delete(beside);
        }
    }
}
