using System.Collections.Immutable;
using ScoreRules.Language.Overlays;

namespace ScoreRules.Language.Binding;

/// <summary>A house with all names resolved: what the judge applies. Lists stand in the order of files and lines.</summary>
public sealed record BoundRuleset
{
    /// <summary>The house, or null when no file says which.</summary>
    public HouseHeader? House { get; init; }

    /// <summary>Attributes, worked-out ones and the built-in likeness included.</summary>
    public required ImmutableArray<AttributeDefinition> Attributes { get; init; }

    /// <summary>Muscles.</summary>
    public ImmutableArray<MuscleDefinition> Muscles { get; init; } = [];

    /// <summary>Targets and sub-targets.</summary>
    public ImmutableArray<TargetDefinition> Targets { get; init; } = [];

    /// <summary>Tiers, best first.</summary>
    public ImmutableArray<TierDefinition> Tiers { get; init; } = [];

    /// <summary>Words of the house.</summary>
    public ImmutableArray<SayDefinition> Words { get; init; } = [];

    /// <summary>Criteria.</summary>
    public ImmutableArray<CriterionDefinition> Criteria { get; init; } = [];

    /// <summary>Weights by order and by comparison.</summary>
    public ImmutableArray<WeightsDefinition> Weights { get; init; } = [];

    /// <summary>Ways in to called facts.</summary>
    public ImmutableArray<CallDefinition> Calls { get; init; } = [];

    /// <summary>Recipes.</summary>
    public ImmutableArray<RecipeDefinition> Recipes { get; init; } = [];

    /// <summary>Points given and taken.</summary>
    public ImmutableArray<AwardDefinition> Awards { get; init; } = [];

    /// <summary>Reasons that cancel out.</summary>
    public ImmutableArray<CancelOutDefinition> CancelOuts { get; init; } = [];

    /// <summary>Caps and floors.</summary>
    public ImmutableArray<LimitDefinition> Limits { get; init; } = [];

    /// <summary>What is left out.</summary>
    public ImmutableArray<ExclusionDefinition> Exclusions { get; init; } = [];

    /// <summary>Cautions.</summary>
    public ImmutableArray<CautionDefinition> Cautions { get; init; } = [];

    /// <summary>Contradictions that no movement may show.</summary>
    public ImmutableArray<RefusalDefinition> Refusals { get; init; } = [];

    /// <summary>Movements as declared.</summary>
    public ImmutableArray<MovementDeclaration> Movements { get; init; } = [];

    /// <summary>Personal judgements.</summary>
    public ImmutableArray<PlaceDefinition> Places { get; init; } = [];

    /// <summary>How studies and principles are brought together; null when the house does not say.</summary>
    public EvidenceDefinition? Evidence { get; init; }

    /// <summary>Studies, shown, weighed and withdrawn ones.</summary>
    public ImmutableArray<StudyDefinition> Studies { get; init; } = [];

    /// <summary>Expectations.</summary>
    public ImmutableArray<ExpectationDefinition> Expectations { get; init; } = [];

    /// <summary>Profiles.</summary>
    public ImmutableArray<ProfileDefinition> Profiles { get; init; } = [];

    /// <summary>Questions.</summary>
    public ImmutableArray<QuestionDefinition> Questions { get; init; } = [];

    /// <summary>Choices of a few movements that go together.</summary>
    public ImmutableArray<ChoiceDefinition> Choices { get; init; } = [];

    /// <summary>Prose.</summary>
    public ImmutableArray<PhilosophyText> Philosophy { get; init; } = [];

    /// <summary>The houses it builds on, the base of all first.</summary>
    public ImmutableArray<BaseHouse> Bases { get; init; } = [];

    /// <summary>What was changed and dropped of the houses it builds on.</summary>
    public ImmutableArray<Amendment> Amendments { get; init; } = [];

    /// <summary>The day it is judged for; null when no date matters.</summary>
    public DateOnly? Date { get; init; }

    /// <summary>Statements that are not in force on that day.</summary>
    public ImmutableArray<StatementInfo> NotInForce { get; init; } = [];

    /// <summary>Warnings that its authors accept.</summary>
    public ImmutableArray<AcceptedWarning> Accepted { get; init; } = [];

    /// <summary>What was read but has no effect yet.</summary>
    public ImmutableArray<NotYetApplied> NotYetApplied { get; init; } = [];

    /// <summary>Names of called facts, in the order of their first statement.</summary>
    public IEnumerable<string> CalledFacts => Calls.Select(call => call.Fact).Distinct(StringComparer.Ordinal);

    /// <summary>A word's number, or null when the house does not say it.</summary>
    public double? Word(string word) => Words.FirstOrDefault(say => Text.NameText.Same(say.Info.Name!, word))?.Number;
}
