using System.Collections.Immutable;
using System.Globalization;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;
using ScoreRules.Tiering;

namespace ScoreRules.Report.Views;

/// <summary>What a reader can choose on the page: kit that a movement needs, and joints that attributes rate.</summary>
public sealed class FilterChoices
{
    private const string Stress = " stress";
    private const string Sore = "sore joint";
    private readonly AttributeDefinition? equipment;

    /// <summary>Looks up what the ranked movements can be filtered by.</summary>
    public FilterChoices(BoundRuleset ruleset, ImmutableArray<TargetRanking> rankings)
    {
        var movements = rankings.SelectMany(ranking => ranking.Placements).Select(placement => placement.Row.Movement).DistinctBy(movement => movement.Index).ToList();
        equipment = ruleset.Attributes.FirstOrDefault(attribute => attribute.Name == WellKnownAttributes.Equipment);
        Kit = equipment is null ? [] : [.. movements.SelectMany(movement => Needs(movement).Codes.IsDefault ? [] : Needs(movement).Codes).Distinct().Order().Select(code => (code, equipment.Values[code]))];
        Joints = [.. ruleset.Attributes.Where(attribute => attribute.Kind == AttributeKind.Rating && attribute.Name.EndsWith(Stress, StringComparison.Ordinal) && movements.Exists(movement => movement.Facts[attribute.Index].Value.IsKnown))];
        SoreCautions = [.. ruleset.Cautions.Where(AsksForASoreJoint).OrderByDescending(caution => caution.Severity).ThenBy(caution => caution.Text, StringComparer.Ordinal)];
    }

    /// <summary>Pieces of kit, each with its code.</summary>
    public ImmutableArray<(int Code, string Name)> Kit { get; }

    /// <summary>Attributes that rate how much a movement loads a joint.</summary>
    public ImmutableArray<AttributeDefinition> Joints { get; }

    /// <summary>Cautions that hold for whoever has a sore joint; the page shows them before results once a joint is chosen.</summary>
    public ImmutableArray<CautionDefinition> SoreCautions { get; }

    /// <summary>Name of the joint that an attribute rates.</summary>
    public static string JointOf(AttributeDefinition stress) => stress.Name[..^Stress.Length];

    /// <summary>Its everyday name, where the house gives one: "lower back" for the lumbar spine.</summary>
    public static string Spoken(AttributeDefinition stress) => stress.Synonyms.FirstOrDefault(name => name.EndsWith(Stress, StringComparison.Ordinal)) is { } everyday ? everyday[..^Stress.Length] : JointOf(stress);

    /// <summary>The kit a movement needs: codes, or "?" where it is not recorded.</summary>
    public string KitOf(Movement movement) => equipment is null ? "" : Needs(movement).IsKnown ? string.Join(' ', Needs(movement).Codes.Select(code => code.ToString(CultureInfo.InvariantCulture))) : "?";

    /// <summary>How a movement loads the joints: ratings in the order of <see cref="Joints"/>, "?" where not recorded.</summary>
    public string LoadOf(Movement movement) => string.Join(' ', Joints.Select(joint => movement.Facts[joint.Index].Value is { IsKnown: true } value ? value.Number.ToString("0.##", CultureInfo.InvariantCulture) : "?"));

    private FactValue Needs(Movement movement) => movement.Facts[equipment!.Index].Value;

    private static bool AsksForASoreJoint(CautionDefinition caution) =>
        ConditionWalk.Tests(caution.Condition).OfType<AttributeTest>().Any(test => test.Attribute.IsAboutThePerson && test.Codes.Contains(test.Attribute.CodeOf(Sore)));
}
