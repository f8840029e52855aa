using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Language;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;

namespace ScoreRules.Publishing.Vocabulary;

/// <summary>All words that a house's text may use, as far as they could be read.</summary>
public sealed class WordList
{
    private const int ShortestPart = 3;

    /// <summary>Collects the words of a house.</summary>
    public WordList(Judgement judgement)
    {
        var ruleset = judgement.Ruleset;
        Entries =
        [
            .. ruleset.Attributes.Where(attribute => !attribute.IsDerived).Select(attribute => AttributeWords.Entry(attribute, ruleset.Muscles)),
            .. ruleset.Attributes.Where(attribute => attribute.IsDerived).Select(DerivedWords.Entry),
            .. ruleset.Attributes.Where(attribute => NameText.Same(attribute.Name, WellKnownAttributes.Equipment)).SelectMany(AttributeWords.Kit),
            .. ruleset.Muscles.Select(Muscle),
            .. ruleset.Targets.Select(Target),
            .. ruleset.Tiers.Select((tier, index) => Tier(tier, index == 0 ? null : ruleset.Tiers[index - 1])),
            .. ruleset.Words.Select(Word),
            .. ruleset.CalledFacts.Select(fact => Called(ruleset.Calls.First(call => call.Fact == fact))),
            .. judgement.Catalogue.Movements.Select(Movement),
        ];
    }

    /// <summary>The words, by kind, in the order of the house.</summary>
    public ImmutableArray<WordEntry> Entries { get; }

    /// <summary>The words of a name: those called so, and those that allow it; if there are none, those whose name it is part of.</summary>
    public ImmutableArray<WordEntry> Matching(string name)
    {
        var exact = Entries.Where(entry => entry.Synonyms.Prepend(entry.Name).Concat(entry.Values).Any(known => NameText.Same(known, name))).ToImmutableArray();
        var key = NameText.Key(name);
        return !exact.IsEmpty || key.Length < ShortestPart ? exact
            : [.. Entries.Where(entry => entry.Synonyms.Prepend(entry.Name).Any(known => NameText.Key(known).Contains(key, StringComparison.Ordinal)))];
    }

    /// <summary>The words nearest to a name that matches none.</summary>
    public ImmutableArray<string> Nearest(string name) =>
        NameSuggester.Nearest(name, Entries.SelectMany(entry => entry.Synonyms.Prepend(entry.Name).Concat(entry.Kind == WordKind.Attribute ? entry.Values : [])));

    private static WordEntry Muscle(MuscleDefinition muscle) => new(WordKind.Muscle, muscle.Info.Name!, muscle.Crosses.IsEmpty ? "" : $"crosses {FactText.Join(muscle.Crosses)}")
    {
        Description = muscle.Latin,
        Location = muscle.Info.Location,
    };

    private static WordEntry Target(TargetDefinition target) => new(WordKind.Target, target.Name, $"measured against the {target.Benchmark}{(target.Parent is null ? "" : $"; part of {target.Parent}")}")
    {
        Values = [.. target.Muscles.Select(muscle => $"{muscle.Muscle} {NumberText.Plain(Tiering.Rounding.Printed(muscle.Share * 100, 1))}%")],
        Location = target.Info.Location,
    };

    private static WordEntry Tier(TierDefinition tier, TierDefinition? better) => new(WordKind.Tier, tier.Name, Sentences.Range(tier, better)) { Location = tier.Location };

    private static WordEntry Word(SayDefinition word)
    {
        var bound = word.Bound switch { SayBound.AtLeast => "at least ", SayBound.Within => "within ", _ => "" };
        return new WordEntry(WordKind.Word, word.Info.Name!, $"{bound}{NumberText.Plain(word.Unit == "%" ? word.Number * 100 : word.Number)}{(word.Unit is null ? "" : $" {word.Unit}")}") { Location = word.Info.Location };
    }

    private static WordEntry Called(CallDefinition call) => new(WordKind.CalledFact, call.Fact, "a fact of the house's rules") { Description = call.Info.Because, Location = call.Info.Location };

    private static WordEntry Movement(Movement movement) => new(WordKind.Movement, movement.Name, movement.Trains.IsEmpty ? "" : $"trains {FactText.Join(movement.Trains.Select(target => target.Name))}")
    {
        Synonyms = movement.Synonyms,
        Description = movement.Like is null ? null : $"like {movement.Like}",
        Location = movement.Location,
    };
}
