using System.Collections.Immutable;
using System.Globalization;
using ScoreRules.Explanation;
using ScoreRules.Language.Binding;
using ScoreRules.Publishing;
using ScoreRules.Tiering;

namespace ScoreRules.Report.Views;

/// <summary>One movement in one target as a page shows it.</summary>
public sealed class CardView
{
    private const int MostCautions = 4;

    /// <summary>Arranges one explanation.</summary>
    public CardView(TargetView target, PlacementExplanation explained)
    {
        (Target, Explained) = (target, explained);
        var parts = explained.Placement?.IsBenchmark == true ? [] : explained.Reasons;
        Bars = [.. parts.Where(part => Rounding.Printed(part.Points, 1) != 0)];
        Level = [.. parts.Where(part => Rounding.Printed(part.Points, 1) == 0).Select(part => part.Name)];
        var first = explained.Cautions.Where(caution => caution.Caution.Place != CautionPlace.AtTheFoot).ToList();
        Face = [.. first.Where((caution, i) => i < MostCautions || caution.Caution.Severity >= CautionSeverity.High)];
        More = [.. first.Except(Face)];
    }

    /// <summary>The target it is part of.</summary>
    public TargetView Target { get; }

    /// <summary>The whole tree.</summary>
    public PlacementExplanation Explained { get; }

    /// <summary>Where it stands; null when it is left out.</summary>
    public Placement? Placement => Explained.Placement;

    /// <summary>Its name, capital first.</summary>
    public string Name => Typeset.Capital(Explained.Row.Movement.Name);

    /// <summary>Anchor on the page.</summary>
    public string Id => "c" + Explained.Row.Index.ToString(CultureInfo.InvariantCulture);

    /// <summary>What sets it apart from the benchmark by a tenth of a point or more, largest first.</summary>
    public ImmutableArray<Reason> Bars { get; }

    /// <summary>Criteria on which it is level with the benchmark.</summary>
    public ImmutableArray<string> Level { get; }

    /// <summary>Cautions on the face of the card, most serious first.</summary>
    public ImmutableArray<ShownCaution> Face { get; }

    /// <summary>Less serious cautions beyond four.</summary>
    public ImmutableArray<ShownCaution> More { get; }

    /// <summary>Cautions beside the name in a list.</summary>
    public IEnumerable<ShownCaution> BesideTheName => Explained.Cautions.Where(caution => caution.Caution.Place == CautionPlace.BesideTheName);

    /// <summary>Its verdict in a list: no number, since that stands beside it.</summary>
    public string RowVerdict =>
        Placement is null ? Sentences.Verdict(Explained)
        : Placement.IsBenchmark ? "The benchmark: all gaps are measured from here."
        : Target.Benchmark is { } benchmark ? Sentences.Apart(Explained, benchmark)
        : Sentences.Verdict(Explained);
}
