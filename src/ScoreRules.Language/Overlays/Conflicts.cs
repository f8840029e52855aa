using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax.Grammar;

namespace ScoreRules.Language.Overlays;

/// <summary>Refuses what one house says twice or both ways about one thing: the order of statements must not matter.</summary>
internal sealed class Conflicts(OverlayFindings report)
{
    /// <summary>The changes and drops without those that clash with an earlier one.</summary>
    public List<Resolved> Without(IEnumerable<Resolved> all)
    {
        var sound = new List<Resolved>();
        foreach (var next in all)
        {
            if (sound.Find(before => ReferenceEquals(before.Things[0], next.Things[0]) && Clash(before, next)) is { } earlier)
            {
                Report(earlier, next);
            }
            else
            {
                sound.Add(next);
            }
        }

        return sound;
    }

    private static bool Clash(Resolved left, Resolved right) => left.Kind.IsDrop || right.Kind.IsDrop || Keys(left).Overlaps(Keys(right));

    private static HashSet<string> Keys(Resolved change) => change.Kind.Words == "say" ? [LineParts.Head]
        : [.. LineParts.Of(change.Amending, change.Things[0].Spec == RuleGrammar.WorkOut).Where(part => part.Key != LineParts.Added && part.Clause.Spec != Uniform.Note && part.Clause.Spec != Uniform.Because).Select(part => part.Key)];

    private void Report(Resolved earlier, Resolved next)
    {
        var title = Things.Title(next.Kind, next.Amending);
        var headline = earlier.Kind.IsDrop && next.Kind.IsDrop ? $"{Capital(title)} is dropped twice"
            : earlier.Kind.IsDrop || next.Kind.IsDrop ? $"{Capital(title)} is changed and dropped"
            : $"One line of {title} is changed twice";
        report.Report("SR2107", headline, next.Amending, null, "second time", [new Label(earlier.Amending.HeadLocation, "first time")], new Suggestion("keep one of the two"));
    }

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
