using System.Collections.Immutable;
using ScoreRules.Certainty;
using ScoreRules.Explanation;
using ScoreRules.Language.Binding;
using ScoreRules.Profiles;
using ScoreRules.Publishing;

namespace ScoreRules.Report.Views;

/// <summary>All that the page shows of one judgement, arranged for reading; nothing is worded or computed anew here.</summary>
public sealed class ReportView
{
    /// <summary>Arranges a judgement.</summary>
    /// <exception cref="InvalidOperationException">Nothing was ranked.</exception>
    public ReportView(Judgement judgement, ReportSlots slots)
    {
        (Judgement, Slots) = (judgement, slots);
        Explainer = judgement.Explainer ?? throw new InvalidOperationException("Nothing was ranked.");
        Edition = Edition.Of(judgement);
        Places = new PlaceNames(judgement.Sources);
        Rules = new RuleBook(judgement, Places);
        Shading = new TierShading(judgement.Ruleset.Tiers);
        var view = judgement.Profile is { } profile ? new ProfileView(judgement.Ruleset, judgement.Inferred!, profile) : null;
        Personal = view is null ? [] : [.. judgement.Rankings.Select(view.Of)];
        Targets = [.. (view is null ? judgement.Rankings : [.. Personal.Select(one => one.Ranking)]).Select(ranking => new TargetView(this, ranking))];
        Filters = new FilterChoices(judgement.Ruleset, judgement.Rankings);
    }

    /// <summary>The judgement.</summary>
    public Judgement Judgement { get; }

    /// <summary>What other analyses add.</summary>
    public ReportSlots Slots { get; }

    /// <summary>How sure the placements are; null when that was not tried out.</summary>
    public HouseCertainty? Certainty { get; init; }

    /// <summary>Explains placements.</summary>
    public Explainer Explainer { get; }

    /// <summary>The targets, as the judgement's profile sees them if it has one.</summary>
    public ImmutableArray<TargetView> Targets { get; }

    /// <summary>What the profile sets aside, target by target; empty without a profile.</summary>
    public ImmutableArray<PersonalRanking> Personal { get; }

    /// <summary>The rules of the house with their text.</summary>
    public RuleBook Rules { get; }

    /// <summary>File names, shortened.</summary>
    public PlaceNames Places { get; }

    /// <summary>The depth of hue of each tier.</summary>
    public TierShading Shading { get; }

    /// <summary>What a reader can filter by on the page.</summary>
    public FilterChoices Filters { get; }

    /// <summary>The house with its names resolved.</summary>
    public BoundRuleset Ruleset => Judgement.Ruleset;

    /// <summary>Title of the page.</summary>
    public string Title => Judgement.Profile is { } profile ? $"{Edition.House}: {profile.Name}" : Edition.House;

    /// <summary>The edition.</summary>
    internal Edition Edition { get; }

    /// <summary>Cautions of one place for the whole page, most serious first.</summary>
    internal ImmutableArray<(CautionDefinition Caution, bool Undecided, ImmutableArray<string> Movements)> Cautions(CautionPlace place) =>
        new CautionList(Targets.Select(target => target.Ranking), Explainer).At(place);
}
