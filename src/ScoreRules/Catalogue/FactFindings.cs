using System.Collections.Immutable;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;

namespace ScoreRules.Catalogue;

/// <summary>Findings about stated facts and the inherited facts they meet.</summary>
internal static class FactFindings
{
    /// <summary>SR7004: <c>but</c> with nothing to replace.</summary>
    public static Diagnostic NothingToReplace(ResolvedMovement movement, StatedFact fact)
    {
        var declaration = movement.Declaration;
        var headline = movement.Original is { } original
            ? $"\"but\" replaces an inherited fact, and \"{original.Declaration.Name}\" says nothing about \"{fact.Attribute.Name}\""
            : $"\"but\" replaces an inherited fact, and \"{declaration.Name}\" is like no other movement";
        ImmutableArray<Label> others = movement.Original is not null && declaration.LikeLocation is { } like
            ? [new Label(like, $"says nothing about \"{fact.Attribute.Name}\"")]
            : [];
        return Error("SR7004", headline, declaration, new Label(fact.Location, "nothing to replace"), others, ButAdvice.TakeOut(fact, declaration));
    }

    /// <summary>SR7005: a fact that replaces an inherited one without saying so.</summary>
    public static Diagnostic ReplacesSilently(ResolvedMovement movement, StatedFact fact, CatalogueFact inherited)
    {
        var from = inherited.InheritedFrom!;
        var headline = $"\"{movement.Declaration.Name}\" already takes \"{fact.Attribute.Name}\" over from \"{from}\"";
        ImmutableArray<Label> others = inherited.Location is { } place ? [new Label(place, $"stated here for \"{from}\"")] : [];
        return Error("SR7005", headline, movement.Declaration, new Label(fact.Location, "replaces what is inherited without saying \"but\""), others,
            ButAdvice.PutIn(fact, movement.Declaration), new Suggestion("or take it out to keep what is inherited"));
    }

    /// <summary>SR7004 for joints, loads and places.</summary>
    public static Diagnostic NothingToReplace(ResolvedMovement movement, GeometryLine line)
    {
        var name = movement.Declaration.Name;
        var headline = movement.Original is { } original
            ? $"\"but\" replaces an inherited {Word(line)}, and \"{original.Declaration.Name}\" says nothing about \"{line.Name}\""
            : $"\"but\" replaces an inherited {Word(line)}, and \"{name}\" is like no other movement";
        return Error("SR7004", headline, movement.Declaration, new Label(line.Location, "nothing to replace"), [], new Suggestion("say it without \"but\", on a line of its own"));
    }

    /// <summary>SR7005 for joints, loads and places.</summary>
    public static Diagnostic ReplacesSilently(ResolvedMovement movement, GeometryLine line, GeometryLine inherited) =>
        Error("SR7005", $"\"{movement.Declaration.Name}\" already takes \"{line.Name}\" over from \"{movement.Original!.Declaration.Name}\"", movement.Declaration,
            new Label(line.Location, "replaces what is inherited without saying \"but\""), [new Label(inherited.Location, "stated here")],
            new Suggestion("if that is meant, say \"but\" on a line of its own"), new Suggestion("or take it out to keep what is inherited"));

    /// <summary>SR7008: one thing stated twice.</summary>
    public static Diagnostic StatedTwice(MovementDeclaration declaration, string what, SourceLocation second, SourceLocation first) =>
        Error("SR7008", $"\"{declaration.Name}\" states \"{what}\" twice", declaration, new Label(second, "second time"),
            [new Label(first, "first time")], new Suggestion("keep one of the two"));

    private static string Word(GeometryLine line) => line is GeometryLine.Angle ? "joint angle" : "line";

    private static Diagnostic Error(
        string code, string headline, MovementDeclaration declaration, Label primary, ImmutableArray<Label> others, params ImmutableArray<Suggestion> suggestions) =>
        new(code, Severity.Error, headline, primary)
        {
            Within = declaration.Info.Title,
            Section = declaration.Info.Section,
            Others = others,
            Suggestions = suggestions,
        };
}
