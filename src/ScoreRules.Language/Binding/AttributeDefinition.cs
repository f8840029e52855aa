using System.Collections.Immutable;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Binding;

/// <summary>Something that can be said of a movement (or, for an audience, of a person).</summary>
/// <param name="Info">What the statement says about itself; its name is the attribute's.</param>
/// <param name="Kind">What values it takes.</param>
public sealed record AttributeDefinition(StatementInfo Info, AttributeKind Kind) : BoundStatement(Info)
{
    /// <summary>Its name as declared.</summary>
    public string Name => Info.Name!;

    /// <summary>Position among the attributes; also the position of its column.</summary>
    public int Index { get; init; }

    /// <summary>Unit of a measure; null for other kinds.</summary>
    public string? Unit { get; init; }

    /// <summary>Lowest and highest rating.</summary>
    public (double Low, double High) Scale { get; init; }

    /// <summary>Allowed words, in declared order; a code is a position in this list.</summary>
    public ImmutableArray<string> Values { get; init; } = [];

    /// <summary>What each rating step means.</summary>
    public ImmutableArray<(double Step, string Text)> Anchors { get; init; } = [];

    /// <summary>One line that says what it is.</summary>
    public string? Description { get; init; }

    /// <summary>Other names a coach may type; used only for suggestions.</summary>
    public ImmutableArray<string> Synonyms { get; init; } = [];

    /// <summary>Whether likeness between movements compares it.</summary>
    public bool CountsForLikeness { get; init; }

    /// <summary>Whether its value belongs to the person and comes from the profile.</summary>
    public bool IsAboutThePerson { get; init; }

    /// <summary>Whether rules work it out, so that no movement may state it.</summary>
    public bool IsWorkedOut { get; init; }

    /// <summary>Whether mechanics derives it from posture and resistance.</summary>
    public bool IsDerived { get; init; }

    /// <summary>Whether its values are words.</summary>
    public bool IsWord => Kind is AttributeKind.OneOf or AttributeKind.SomeOf;

    /// <summary>Position of an allowed word, or -1.</summary>
    public int CodeOf(string word)
    {
        var key = NameText.Key(word);
        for (var i = 0; i < Values.Length; i++)
        {
            if (string.Equals(NameText.Key(Values[i]), key, StringComparison.Ordinal))
            {
                return i;
            }
        }

        return -1;
    }
}
