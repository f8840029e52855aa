using System.Collections.Immutable;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Overlays;

/// <summary>Puts the lines of a change in place of those they replace.</summary>
internal sealed class StatementMerger
{
    private readonly StatementSyntax under;
    private readonly StatementSyntax change;
    private readonly ImmutableArray<string> houses;
    private readonly ImmutableArray<LinePart> kept;
    private readonly ImmutableArray<LinePart> said;
    private readonly StatementComposer composer;
    private readonly ImmutableArray<AmendedLine>.Builder amended = ImmutableArray.CreateBuilder<AmendedLine>();

    private StatementMerger(StatementSyntax under, StatementSyntax change, ImmutableArray<LinePart> said, ImmutableArray<string> houses)
    {
        (this.under, this.change, this.said, this.houses) = (under, change, said, houses);
        kept = LineParts.Of(under, under.Spec == RuleGrammar.WorkOut);
        composer = new StatementComposer(under);
    }

    /// <summary>Merges.</summary>
    /// <param name="under">The statement of the base.</param>
    /// <param name="change">The change.</param>
    /// <param name="said">The parts of the change that have an effect.</param>
    /// <param name="houses">Names of the houses by layer.</param>
    /// <param name="findings">Where findings go about lines that do not go together.</param>
    public static MergedStatement Merge(StatementSyntax under, StatementSyntax change, ImmutableArray<LinePart> said, ImmutableArray<string> houses, DiagnosticBag findings) =>
        new StatementMerger(under, change, said, houses).Merge(findings);

    private MergedStatement Merge(DiagnosticBag findings)
    {
        WriteHead();
        var open = said.Where(part => part.Key is not (LineParts.Added or LineParts.Head)).Select(part => part.Key).Distinct(StringComparer.Ordinal).ToList();
        foreach (var group in kept.GroupBy(part => part.Key is LineParts.Added ? part.Key + part.Span.Start : part.Key, StringComparer.Ordinal))
        {
            if (open.Remove(group.Key))
            {
                Replace([.. group]);
            }
            else
            {
                WriteAll(under, group);
            }
        }

        foreach (var key in open)
        {
            Add([.. said.Where(part => part.Key == key)]);
        }

        foreach (var part in said.Where(part => part.Key == LineParts.Added))
        {
            Add([part]);
        }

        return new MergedStatement(composer.ToStatement(under.IsWhole && change.IsWhole, findings), amended.ToImmutable());
    }

    private void WriteHead()
    {
        var first = under.First!.Span;
        var part = said.FirstOrDefault(part => part.Key == LineParts.Head);
        SourceSpan? replaced = under.First switch
        {
            ClauseSyntax<OperandSyntax> amount => amount.Content.Span,
            ClauseSyntax<NameSyntax> name => name.Content.Span,
            _ => null,
        };
        var (written, spanIn) = part?.Clause switch
        {
            ClauseSyntax<QuantitySyntax> points => (points.Content.Span, replaced),
            ClauseSyntax<NameSyntax> tier => (tier.Content.Span, replaced),
            _ when change.First is ClauseSyntax<SaySyntax> said => (SourceSpan.FromBounds(said.Content.Word.Span.Start, said.Span.End), SourceSpan.FromBounds(((ClauseSyntax<SaySyntax>)under.First!).Content.Word.Span.Start, first.End)),
            _ => (default, null),
        };
        if (spanIn is not { } place)
        {
            composer.Copy(under, first);
            return;
        }

        composer.Copy(under, SourceSpan.FromBounds(first.Start, place.Start));
        composer.Copy(change, written);
        composer.Copy(under, SourceSpan.FromBounds(place.End, first.End));
        Note(part?.TextIn(change.Source) ?? OneLine(change, change.First!.Span), part?.Clause.Span ?? change.First!.Span, OneLine(under, first), first);
    }

    private void Replace(ImmutableArray<LinePart> before)
    {
        var after = said.Where(part => part.Key == before[0].Key).ToImmutableArray();
        if (after[0].Clause is ClauseSyntax<ChangedWeightSyntax> { Content.Factor: { } factor })
        {
            Scale(before, after[0], factor.Number);
        }
        else if (after[0].Clause is ClauseSyntax<ChangedTierSyntax> { Content.NewName: { } name })
        {
            Rename(before[0], after[0], name);
        }
        else if (before[0].Key == LineParts.Widened)
        {
            Widen(before[0], after[0]);
        }
        else
        {
            var but = before.Any(part => part.Clause.Spec.Starter.StartsWith("but", StringComparison.Ordinal));
            foreach (var part in after)
            {
                composer.Line(change, part, but && !part.Clause.Spec.Starter.StartsWith("but", StringComparison.Ordinal) ? "but " : "");
            }

            Note(after, before);
        }
    }

    private void Scale(ImmutableArray<LinePart> before, LinePart after, double factor)
    {
        foreach (var part in before)
        {
            composer.BeginLine(under, part);
            foreach (var (span, words) in ScaledWeight.Pieces(part.Clause, ((ClauseSyntax<WeightSyntax>)part.Clause).Content.Value!, factor))
            {
                Put(span, words, after);
            }
        }

        Note([after], before);
    }

    private void Put(SourceSpan span, string? words, LinePart after)
    {
        if (words is null)
        {
            composer.Copy(under, span);
        }
        else
        {
            composer.Write(words, change, after.Clause.Span);
        }
    }

    private void Rename(LinePart before, LinePart after, NameSyntax name)
    {
        var old = ((ClauseSyntax<TierSyntax>)before.Clause).Content.Name.Span;
        composer.BeginLine(under, before);
        composer.Copy(change, name.Span);
        composer.Copy(under, SourceSpan.FromBounds(old.End, before.Span.End));
        Note([after], [before]);
    }

    private void Widen(LinePart before, LinePart after)
    {
        composer.Line(under, before);
        var had = ((ClauseSyntax<NameSyntax[]>)before.Clause).Content.Select(name => name.Key).ToHashSet(StringComparer.Ordinal);
        foreach (var name in ((ClauseSyntax<NameSyntax[]>)after.Clause).Content.Where(name => had.Add(name.Key)))
        {
            composer.Write(", ", change, name.Span with { Length = 0 });
            composer.Copy(change, name.Span);
        }

        Note([after], [before]);
    }

    private void Add(ImmutableArray<LinePart> after)
    {
        WriteAll(change, after);
        Note(after, []);
    }

    private void WriteAll(StatementSyntax from, IEnumerable<LinePart> parts)
    {
        foreach (var part in parts)
        {
            composer.Line(from, part);
        }
    }

    private void Note(ImmutableArray<LinePart> after, ImmutableArray<LinePart> before)
    {
        // Remarks are no change, and a reason is told with the change itself.
        var text = Together(after, change);
        var old = before.IsEmpty ? null : Together(before, under);
        if (after[0].Clause.Spec != Uniform.Note && after[0].Clause.Spec != Uniform.Because && text != old)
        {
            Note(text, after[0].Clause.Span, old, before.IsEmpty ? default : before[0].Span);
        }
    }

    private void Note(string text, SourceSpan place, string? old, SourceSpan oldPlace)
    {
        var before = old is null ? null : under.At(oldPlace);
        amended.Add(new AmendedLine(text, change.At(place), old, before, before is null ? null : houses[before.Source.Floor]));
    }

    private static string Together(ImmutableArray<LinePart> parts, StatementSyntax of) => string.Join("; ", parts.Select(part => part.TextIn(of.Source)));

    private static string OneLine(StatementSyntax of, SourceSpan span) => string.Join(' ', of.Source.Slice(span).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
