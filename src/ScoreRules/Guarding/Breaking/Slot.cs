using System.Collections.Immutable;
using ScoreRules.Language.Binding;

namespace ScoreRules.Guarding.Breaking;

/// <summary>One statement of a ruleset, and the ruleset with another in its place.</summary>
/// <param name="Statement">The statement as it is.</param>
/// <param name="With">The ruleset with the other; without any for null.</param>
internal readonly record struct Slot<T>(T Statement, Func<T?, BoundRuleset> With)
    where T : BoundStatement
{
    /// <summary>The statement broken in one way.</summary>
    public Breakage Broken(BreakageKind kind, T? broken) => new(kind, Statement is PlaceDefinition place ? $"{place.Info.Kind} \"{place.Movement}\"" : Statement.Info.Title, Statement.Info.Location, With(broken));

    /// <summary>All statements of one list.</summary>
    /// <param name="all">The list.</param>
    /// <param name="put">The ruleset with another list in its place.</param>
    public static IEnumerable<Slot<T>> Of(ImmutableArray<T> all, Func<ImmutableArray<T>, BoundRuleset> put) =>
        all.Select((statement, position) => new Slot<T>(statement, other => put(other is null ? all.RemoveAt(position) : all.SetItem(position, other))));
}
