using ScoreRules.Houses;

namespace ScoreRules.Cli.Commands;

/// <summary>The house meant when none, or only a movement, is typed.</summary>
internal static class HouseChoice
{
    /// <summary>The house typed; the current folder, if it is a house, when none is.</summary>
    /// <exception cref="HouseException">None is typed, and the current folder is none.</exception>
    public static string Of(string[]? typed) => typed is [var named, ..] ? named : Current();

    /// <summary>The current folder, if it is a house.</summary>
    /// <exception cref="HouseException">It is none.</exception>
    public static string Current() => HouseFolder.IsHouse(".")
        ? "."
        : throw new HouseException("Name a house: a folder of .rules files, for example rulesets/longreach. (The current folder holds no rule text.)");
}
