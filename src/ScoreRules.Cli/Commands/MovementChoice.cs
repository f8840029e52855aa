using ScoreRules.Catalogue;
using ScoreRules.Houses;
using ScoreRules.Language.Diagnostics;

namespace ScoreRules.Cli.Commands;

/// <summary>The movement meant by a name.</summary>
internal static class MovementChoice
{
    /// <summary>The house typed, or the current folder when only a movement is.</summary>
    /// <param name="typed">One or two names.</param>
    /// <param name="command">The command, for the way out.</param>
    /// <exception cref="HouseException">Only a house is typed.</exception>
    public static string House(string[] typed, string command) => typed.Length == 2 ? typed[0]
        : Directory.Exists(typed[0]) ? throw new HouseException($"Which movement? Type: scorerules {command} {typed[0]} \"MOVEMENT\".")
        : HouseChoice.Current();

    /// <summary>The movement of a name or synonym.</summary>
    /// <exception cref="HouseException">There is none.</exception>
    public static Movement Find(Judgement judgement, string name)
    {
        if (judgement.Catalogue.Find(name) is { } movement)
        {
            return movement;
        }

        var all = judgement.Catalogue.Movements.SelectMany(known => known.Synonyms.Prepend(known.Name)).ToList();
        var near = NameSuggester.Nearest(name, all);
        var holding = near.IsEmpty ? [.. all.Where(known => name.Length > 2 && known.Contains(name, StringComparison.OrdinalIgnoreCase)).Take(5)] : near;
        throw new HouseException($"There is no movement \"{name}\" in this house. {(holding.IsEmpty ? "scorerules rank lists all of them." : $"Did you mean {string.Join(", ", holding.Select(known => $"\"{known}\""))}?")}");
    }
}
