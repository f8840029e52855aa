using System.Collections.Immutable;
using ScoreRules.Catalogue.Csv;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;

namespace ScoreRules.Catalogue;

/// <summary>Findings about a movement as a whole: its targets and what it is like.</summary>
internal static class MovementFindings
{
    private const int MostNamed = 8;

    /// <summary>SR7001: no target stated or inherited.</summary>
    public static Diagnostic TrainsNothing(ResolvedMovement movement, ImmutableArray<TargetDefinition> targets)
    {
        var declaration = movement.Declaration;
        var example = targets.IsEmpty ? "..." : targets[0].Name;
        var advice = ButAdvice.IsCell(declaration)
            ? $"write its target into the column \"trains\", for example {example}"
            : $"add a line such as \"trains {example}\"";
        return new Diagnostic("SR7001", Severity.Error, $"\"{declaration.Name}\" trains no target, so it is ranked nowhere", new Label(declaration.Info.Location, "no target"))
        {
            Within = declaration.Info.Title,
            Section = declaration.Info.Section,
            Others = movement.Original is { } original ? [new Label(LikePlace(declaration), $"\"{original.Declaration.Name}\" trains none either")] : [],
            Notes = targets.IsEmpty ? [] : [$"targets of this house: {Listed(targets.Select(target => target.Name))}"],
            Suggestions = [new Suggestion(advice)],
        };
    }

    /// <summary>SR7006: movements that are like one another in a circle, first by name first.</summary>
    public static Diagnostic LikeCircle(ImmutableArray<MovementDeclaration> circle)
    {
        var links = circle.Select((movement, i) => $"\"{movement.Name}\" is like \"{circle[(i + 1) % circle.Length].Name}\"").ToList();
        var told = links.Count <= MostNamed ? string.Join(", ", links) : $"{string.Join(", ", links.Take(MostNamed))} and so on, {links.Count} movements in all";
        return new Diagnostic("SR7006", Severity.Error, $"Movements are like one another in a circle: {told}", new Label(LikePlace(circle[0]), "the circle may be opened here"))
        {
            Within = circle[0].Info.Title,
            Section = circle[0].Info.Section,
            Others = [.. circle.Skip(1).Select(movement => new Label(LikePlace(movement), "or here"))],
            Suggestions = [new Suggestion("state the facts of one of them itself, and take its \"like\" out")],
        };
    }

    /// <summary>SR2004: like a name that no movement has. The binder reports this for rule text; here it can only come from a spreadsheet.</summary>
    public static Diagnostic LikeNobody(MovementDeclaration declaration, IEnumerable<string> names)
    {
        var place = LikePlace(declaration);
        var near = NameSuggester.Nearest(declaration.Like!, names);
        var safety = near.Length == 1 ? EditSafety.Safe : EditSafety.Shown;
        return new Diagnostic("SR2004", Severity.Error, $"\"{declaration.Like}\" is not a movement", new Label(place, "not declared anywhere"))
        {
            Within = declaration.Info.Title,
            Section = declaration.Info.Section,
            Suggestions = [.. near.Select(name => CellEdit.Replace($"did you mean \"{name}\"?", place, name, safety))],
        };
    }

    private static SourceLocation LikePlace(MovementDeclaration declaration) => declaration.LikeLocation ?? declaration.Info.Location;

    private static string Listed(IEnumerable<string> names)
    {
        var all = names.ToList();
        return string.Join(", ", all.Take(MostNamed)) + (all.Count > MostNamed ? " and others" : "");
    }
}
