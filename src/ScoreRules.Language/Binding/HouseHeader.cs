using System.Collections.Immutable;

namespace ScoreRules.Language.Binding;

/// <summary>What a ruleset says about itself.</summary>
/// <param name="Info">What the statement says about itself; its name is the house's.</param>
/// <param name="Version">Version as written.</param>
public sealed record HouseHeader(StatementInfo Info, string Version) : BoundStatement(Info)
{
    /// <summary>Its name as declared.</summary>
    public string Name => Info.Name!;

    /// <summary>Who wrote it.</summary>
    public string? WrittenBy { get; init; }

    /// <summary>When it was checked.</summary>
    public DateOnly? CheckedOn { get; init; }

    /// <summary>Who checked it.</summary>
    public string? CheckedBy { get; init; }

    /// <summary>The outcome it judges, such as muscle growth.</summary>
    public string? Judges { get; init; }

    /// <summary>Whom it is meant for.</summary>
    public string? MeantFor { get; init; }

    /// <summary>Whom it is unsuitable for.</summary>
    public ImmutableArray<string> UnsuitableFor { get; init; } = [];

    /// <summary>How many personal judgements its authors allow themselves; null when not said.</summary>
    public int? Judgements { get; init; }

    /// <summary>Whether readers are offered to guess a place before they are told.</summary>
    public bool LetsTheReaderGuess { get; init; }

    /// <summary>Whether an even load may stand for a machine whose cam is not recorded; then it is shown as assumed.</summary>
    public bool AcceptsEvenLoad { get; init; }

    /// <summary>How many reasons for a placement are told.</summary>
    public int Reasons { get; init; } = 3;

    /// <summary>How many reasons against it are told.</summary>
    public int ReasonsAgainst { get; init; } = 1;

    /// <summary>Whose body its mechanics assume; null for the usual one.</summary>
    public PersonDefinition? Person { get; init; }
}
