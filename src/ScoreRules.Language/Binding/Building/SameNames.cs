using ScoreRules.Language.Diagnostics;

namespace ScoreRules.Language.Binding.Building;

/// <summary>A criterion and a called fact of one name: read aloud, nobody can tell which of them is meant.</summary>
internal static class SameNames
{
    /// <summary>Reports them.</summary>
    public static void Report(BindContext context)
    {
        foreach (var name in context.CalledFacts.Names.Where(name => context.Criteria.LocationOf(name) is not null))
        {
            context.Findings.Add(new Diagnostic("SR2014", Severity.Warning, $"\"{name}\" is both a criterion and a called fact", new Label(context.CalledFacts.LocationOf(name)!, "called fact"))
            {
                Others = [new Label(context.Criteria.LocationOf(name)!, "criterion")],
                Suggestions = [new Suggestion("give one of them another name")],
            });
        }
    }
}
