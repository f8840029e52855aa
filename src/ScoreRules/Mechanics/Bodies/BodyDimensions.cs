namespace ScoreRules.Mechanics.Bodies;

/// <summary>The segments of one person in kilograms and metres.</summary>
public sealed class BodyDimensions
{
    private readonly SegmentSize[] segments;

    /// <summary>Scales the constants: mass x fraction, stature x fraction.</summary>
    /// <param name="person">Whose body.</param>
    public BodyDimensions(Person person)
    {
        Person = person;
        segments = [.. Enum.GetValues<Segment>().Select(segment => Scale(BodyConstants.Of(segment, person.Sex), person))];
    }

    /// <summary>Whose body.</summary>
    public Person Person { get; }

    /// <summary>Upper arm, one side.</summary>
    public SegmentSize UpperArm => this[Segment.UpperArm];

    /// <summary>Forearm, one side.</summary>
    public SegmentSize Forearm => this[Segment.Forearm];

    /// <summary>Hand, one side.</summary>
    public SegmentSize Hand => this[Segment.Hand];

    /// <summary>Thigh, one side.</summary>
    public SegmentSize Thigh => this[Segment.Thigh];

    /// <summary>Shank, one side.</summary>
    public SegmentSize Shank => this[Segment.Shank];

    /// <summary>Foot, one side.</summary>
    public SegmentSize Foot => this[Segment.Foot];

    /// <summary>Hip to shoulder, m.</summary>
    public double TrunkMetres => this[Segment.Trunk].Metres;

    /// <summary>Ankle joint over the sole, m.</summary>
    public double AnkleMetres => BodyConstants.AnkleHeight * Person.StatureMetres;

    /// <summary>Body weight, N.</summary>
    public double WeightNewtons => BodyConstants.Gravity * Person.MassKilograms;

    /// <summary>One segment.</summary>
    /// <param name="segment">Which.</param>
    public SegmentSize this[Segment segment] => segments[(int)segment];

    private static SegmentSize Scale(SegmentFractions part, Person person) =>
        new(part.Mass * person.MassKilograms, part.Length * person.StatureMetres, part.Centre * part.CentreLength * person.StatureMetres);
}
