using ScoreRules.Language.Binding;

namespace ScoreRules.Guarding.Breaking;

/// <summary>Recipes: one step taken out, or its fixed number halved or doubled. The first step, which begins, is never taken out.</summary>
internal static class RecipeBreakages
{
    /// <summary>All of them.</summary>
    public static IEnumerable<Breakage> Of(BoundRuleset ruleset) =>
        Slot<RecipeDefinition>.Of(ruleset.Recipes, recipes => ruleset with { Recipes = recipes })
            .SelectMany(slot => slot.Statement.Steps.SelectMany((step, position) => Of(slot, step, position)));

    private static IEnumerable<Breakage> Of(Slot<RecipeDefinition> slot, RecipeStep step, int position)
    {
        var steps = slot.Statement.Steps;
        if (position > 0)
        {
            yield return slot.Broken(BreakageKind.PartDeleted, slot.Statement with { Steps = steps.RemoveAt(position) }) with { Part = step.Location };
        }

        if (double.IsFinite(step.Number) && step.Number != 0)
        {
            yield return slot.Broken(BreakageKind.Halved, slot.Statement with { Steps = steps.SetItem(position, step with { Number = step.Number / 2 }) }) with { Part = step.Location };
            yield return slot.Broken(BreakageKind.Doubled, slot.Statement with { Steps = steps.SetItem(position, step with { Number = step.Number * 2 }) }) with { Part = step.Location };
        }
    }
}
