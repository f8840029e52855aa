using ScoreRules.Language.Binding;

namespace ScoreRules.Guarding.Breaking;

/// <summary>What a statement is limited to, and what it spares, taken out.</summary>
internal static class ScopeBreakages
{
    /// <summary>One for <c>only for</c> and one for <c>except for</c>, where they stand.</summary>
    /// <param name="slot">The statement.</param>
    /// <param name="with">The statement saying something else about itself.</param>
    public static IEnumerable<Breakage> Of<T>(Slot<T> slot, Func<StatementInfo, T> with)
        where T : BoundStatement
    {
        var info = slot.Statement.Info;
        if (!info.OnlyFor.IsEmpty)
        {
            yield return slot.Broken(BreakageKind.OnlyForDeleted, with(info with { OnlyFor = [] }));
        }

        if (!info.ExceptFor.IsEmpty)
        {
            yield return slot.Broken(BreakageKind.ExceptForDeleted, with(info with { ExceptFor = [] }));
        }
    }
}
