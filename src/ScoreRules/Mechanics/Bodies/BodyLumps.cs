namespace ScoreRules.Mechanics.Bodies;

/// <summary>Parts of the body taken together, for the movements in which the body itself is the load.</summary>
public static class BodyLumps
{
    /// <summary>Head, arms and trunk over the hips; from the hip towards the shoulder (Winter 2009: 0.678 m at 0.626 of the trunk).</summary>
    /// <param name="body">Whose.</param>
    public static PointMass HeadArmsTrunk(BodyDimensions body) =>
        new(BodyConstants.HeadArmsTrunkMass * body.Person.MassKilograms, BodyConstants.HeadArmsTrunkCentre * body.TrunkMetres);

    /// <summary>
    /// Head, trunk and both arms from their own segments (de Leva), the arms at shoulder level; from the hip towards the head.
    /// Used where legs and trunk must add up to the whole body.
    /// </summary>
    /// <param name="body">Whose.</param>
    public static PointMass UpperBody(BodyDimensions body)
    {
        var (trunk, head) = (body[Segment.Trunk], body[Segment.Head]);
        var arms = 2 * (body.UpperArm.Kilograms + body.Forearm.Kilograms + body.Hand.Kilograms);
        var vertex = (1 - BodyConstants.HipHeight) * body.Person.StatureMetres;
        return new PointMass(trunk.Kilograms, trunk.Metres - trunk.CentreMetres)
            + new PointMass(head.Kilograms, vertex - head.CentreMetres)
            + new PointMass(arms, (BodyConstants.ShoulderHeight - BodyConstants.HipHeight) * body.Person.StatureMetres);
    }

    /// <summary>Both thighs; from the knee towards the hip.</summary>
    /// <param name="body">Whose.</param>
    public static PointMass Thighs(BodyDimensions body) => new(2 * body.Thigh.Kilograms, body.Thigh.Metres - body.Thigh.CentreMetres);

    /// <summary>All above the knees with the hips straight; from the knee towards the head.</summary>
    /// <param name="body">Whose.</param>
    public static PointMass AboveKnees(BodyDimensions body) => Thighs(body) + From(UpperBody(body), body.Thigh.Metres);

    /// <summary>The whole body, straight, arms at shoulder level; from the sole towards the head.</summary>
    /// <param name="body">Whose.</param>
    public static PointMass WholeBody(BodyDimensions body)
    {
        var stature = body.Person.StatureMetres;
        return From(AboveKnees(body), BodyConstants.KneeHeight * stature)
            + new PointMass(2 * body.Shank.Kilograms, (BodyConstants.KneeHeight * stature) - body.Shank.CentreMetres)
            + new PointMass(2 * body.Foot.Kilograms, BodyConstants.FootCentreHeight * stature);
    }

    private static PointMass From(PointMass mass, double below) => mass with { Metres = mass.Metres + below };
}
