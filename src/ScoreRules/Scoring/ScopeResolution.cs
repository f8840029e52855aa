using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;

namespace ScoreRules.Scoring;

/// <summary>Of several lines said for targets, finds the one for the smallest target that fits: the target itself, its parent, every target.</summary>
internal static class ScopeResolution
{
    /// <summary>The line that is in force for a target, or null when none is.</summary>
    public static T? For<T>(TargetDefinition target, ImmutableArray<T> lines, Func<T, ImmutableArray<TargetDefinition>> targetsOf)
        where T : class =>
        lines.FirstOrDefault(line => Names(targetsOf(line), target.Name))
        ?? lines.FirstOrDefault(line => target.Parent is not null && Names(targetsOf(line), target.Parent))
        ?? lines.FirstOrDefault(line => targetsOf(line).IsEmpty);

    /// <summary>Whether a scope entry names a target, or the target it is part of.</summary>
    public static bool Covers(ScopeEntry entry, TargetDefinition target) =>
        entry.Target is { } named && (named.Name == target.Name || (target.Parent is not null && NameText.Same(named.Name, target.Parent)));

    /// <summary>Whether a scope entry names a row: its movement, its target, or the target that is part of.</summary>
    public static bool Covers(ScopeEntry entry, PlacementRow row) =>
        Covers(entry, row.Target) || (entry.Movement is { } movement && NameText.Same(movement, row.Movement.Name));

    /// <summary>Whether a statement is meant for a row: named by its "only for", or that says nothing, and not by its "except for".</summary>
    public static bool Reaches(StatementInfo info, PlacementRow row) => Reaches(info, entry => Covers(entry, row));

    /// <summary>Whether a statement is meant for a target.</summary>
    public static bool Reaches(StatementInfo info, TargetDefinition target) => Reaches(info, entry => Covers(entry, target));

    private static bool Reaches(StatementInfo info, Func<ScopeEntry, bool> covers) => (info.OnlyFor.IsEmpty || info.OnlyFor.Any(covers)) && !info.ExceptFor.Any(covers);

    private static bool Names(ImmutableArray<TargetDefinition> targets, string name) => targets.Any(target => NameText.Same(target.Name, name));
}
