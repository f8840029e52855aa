using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Binding.Building;

/// <summary>Orders called facts and recipes so that each comes after what it rests on; finds circles.</summary>
internal sealed class Strata
{
    private const int MostDrawn = 8;
    private readonly Dictionary<string, HashSet<string>> needs = new(StringComparer.Ordinal);
    private readonly Dictionary<string, SourceLocation> places = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> strata = new(StringComparer.Ordinal);
    private readonly List<List<string>> circles = [];

    /// <summary>Orders the given calls and recipes.</summary>
    public Strata(IEnumerable<CallDefinition> calls, IEnumerable<RecipeDefinition> recipes)
    {
        foreach (var call in calls)
        {
            Add(NameText.Key(call.Fact), call.Info.Location, ConditionWalk.Names(call.Condition));
        }

        foreach (var recipe in recipes)
        {
            var read = recipe.Steps.Select(step => step.Attribute).OfType<AttributeDefinition>().Where(attribute => attribute.IsWorkedOut).Select(KeyOf);
            Add(KeyOf(recipe.Result), recipe.Info.Location, read.Concat(recipe.Steps.SelectMany(step => step.Condition is null ? [] : ConditionWalk.Names(step.Condition))));
        }

        foreach (var name in needs.Keys.Order(StringComparer.Ordinal).ToList())
        {
            Visit(name, []);
        }
    }

    /// <summary>The key of a worked-out attribute, told apart from called facts of the same name.</summary>
    public static string KeyOf(AttributeDefinition attribute) => "work out " + NameText.Key(attribute.Name);

    /// <summary>The stratum of a called fact's name or a recipe's key; null when it is part of a circle or rests on one.</summary>
    public int? Of(string name) => strata.TryGetValue(name.StartsWith("work out ", StringComparison.Ordinal) ? name : NameText.Key(name), out var stratum) && stratum >= 0 ? stratum : null;

    /// <summary>Reports each circle once.</summary>
    public void ReportCircles(DiagnosticBag findings)
    {
        foreach (var circle in circles)
        {
            var names = circle.Select(name => $"\"{name}\"").ToList();
            var drawn = names.Count <= MostDrawn ? names : [.. names.Take(MostDrawn), $"... {names.Count - MostDrawn} more"];
            findings.Add(new Diagnostic("SR4003", Severity.Error, circle.Count == 1 ? $"{names[0]} waits for itself" : $"These definitions wait for one another: {string.Join(" -> ", drawn.Append(names[0]))}", new Label(places[circle[0]], "begins here"))
            {
                Others = [.. circle.Skip(1).Take(MostDrawn).Select(name => new Label(places[name], "part of the circle"))],
                Suggestions = [new Suggestion($"define one of them, such as {names[^1]}, by given facts alone")],
            });
        }
    }

    private void Add(string name, SourceLocation place, IEnumerable<string> needed)
    {
        places.TryAdd(name, place);
        if (!needs.TryGetValue(name, out var set))
        {
            needs[name] = set = new HashSet<string>(StringComparer.Ordinal);
        }

        set.UnionWith(needed);
    }

    private int Visit(string name, List<string> path)
    {
        if (strata.TryGetValue(name, out var known))
        {
            return known;
        }

        if (path.IndexOf(name) is >= 0 and var start)
        {
            AddCircle(path[start..]);
            return -1;
        }

        path.Add(name);
        var own = 0;
        foreach (var needed in needs.TryGetValue(name, out var set) ? set.Order(StringComparer.Ordinal) : Enumerable.Empty<string>())
        {
            var below = needs.ContainsKey(needed) ? Visit(needed, path) : -2;
            own = below == -1 || own == -1 ? -1 : Math.Max(own, below + 1);
        }

        path.RemoveAt(path.Count - 1);
        strata[name] = own;
        return own;
    }

    private void AddCircle(List<string> circle)
    {
        var first = circle.IndexOf(circle.Min(StringComparer.Ordinal)!);
        List<string> turned = [.. circle[first..], .. circle[..first]];
        if (!circles.Exists(known => known.SequenceEqual(turned)))
        {
            circles.Add(turned);
        }
    }
}
