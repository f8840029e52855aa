using ScoreRules.Mechanics.Bodies;

namespace ScoreRules.Mechanics.Statics.Loads;

/// <summary>Part of the body's weight on the hands in a push-up, the body straight and level: lever of the centre of mass / lever of the hands.</summary>
public static class PushUpShare
{
    /// <summary>On the feet: share = s_centre / s_hands, both from the sole.</summary>
    /// <param name="body">Whose body.</param>
    /// <param name="handsTowardsFeet">How far the hands stand from under the shoulders towards the feet, m.</param>
    /// <returns>0 to 1; about 0.71 with the hands under the shoulders.</returns>
    public static double OnFeet(BodyDimensions body, double handsTowardsFeet = 0) =>
        BodyLumps.WholeBody(body).Metres / ((BodyConstants.ShoulderHeight * body.Person.StatureMetres) - handsTowardsFeet);

    /// <summary>On the knees, the shanks resting on the floor: the same levers from the knee, for what lies above it.</summary>
    /// <param name="body">Whose body.</param>
    /// <param name="handsTowardsFeet">How far the hands stand from under the shoulders towards the feet, m.</param>
    /// <returns>Share of the whole body's weight, 0 to 1.</returns>
    public static double OnKnees(BodyDimensions body, double handsTowardsFeet = 0)
    {
        var above = BodyLumps.AboveKnees(body);
        var hands = ((BodyConstants.ShoulderHeight - BodyConstants.KneeHeight) * body.Person.StatureMetres) - handsTowardsFeet;
        return above.Kilograms * above.Metres / (body.Person.MassKilograms * hands);
    }
}
