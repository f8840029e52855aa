using System.Collections.Immutable;
using ScoreRules.Language.Binding;

namespace ScoreRules.Catalogue;

/// <summary>Facts of single rows: what the movement says, what the profile says, what the program computed.</summary>
/// <param name="rows">The rows.</param>
/// <param name="inputs">What is known beside the catalogue.</param>
/// <param name="person">Index of the attribute whose words the profile says, or null.</param>
/// <param name="likeness">Index of the attribute that holds the computed likeness, or null.</param>
internal sealed class RowFacts(ImmutableArray<PlacementRow> rows, FactTableInputs inputs, int? person, int? likeness)
{
    // No profile says nothing of the person, and that is known: nothing stays undecided for want of a profile.
    private static readonly CatalogueFact NothingOfThePerson = new(FactValue.Of(ImmutableArray<int>.Empty), FactOrigin.Profile, null, null);
    private static readonly CatalogueFact NotComputed = new(FactValue.Unknown, FactOrigin.Computed, null, null);

    private readonly CatalogueFact audience = new(FactValue.Of([.. inputs.Audience.Order()]), FactOrigin.Profile, null, null);

    /// <summary>The rows.</summary>
    public ImmutableArray<PlacementRow> Rows => rows;

    /// <summary>A fact with where it comes from.</summary>
    public CatalogueFact Fact(int row, AttributeDefinition attribute)
    {
        if (attribute.Index == person)
        {
            return audience;
        }

        if (attribute is { IsAboutThePerson: true, IsWord: true })
        {
            return NothingOfThePerson;
        }

        if (attribute.IsDerived)
        {
            return inputs.Derived?.Invoke(rows[row], attribute) ?? NotComputed;
        }

        return attribute.Index == likeness ? Computed(row) : Stated(row, attribute.Index);
    }

    private CatalogueFact Computed(int row) =>
        inputs.Likeness is { } computed && double.IsFinite(computed[row])
            ? new CatalogueFact(FactValue.Of(computed[row]), FactOrigin.Computed, null, null)
            : NotComputed;

    private CatalogueFact Stated(int row, int attribute)
    {
        var movement = rows[row].Movement;
        return movement.TargetFacts.Of(attribute, rows[row].Target)
            ?? (attribute >= 0 && attribute < movement.Facts.Length ? movement.Facts[attribute] : CatalogueFact.NotSaid);
    }
}
