using System.Runtime.CompilerServices;

namespace ScoreRules.Mechanics.Bodies;

/// <summary>The angles of a body at one instant as a value, so that a step of a movement needs no memory of its own.</summary>
public readonly struct JointAngles
{
    private readonly Buffer degrees;

    private JointAngles(Buffer degrees) => this.degrees = degrees;

    /// <summary>Angle of a motion, degrees.</summary>
    /// <param name="motion">Which.</param>
    public double this[JointMotion motion] => degrees[(int)motion];

    /// <summary>The angles of a posture; what it does not state is 0.</summary>
    /// <param name="posture">The posture.</param>
    public static JointAngles Of(Posture posture)
    {
        var buffer = default(Buffer);
        foreach (var (motion, angle) in posture.Degrees)
        {
            buffer[(int)motion] = angle;
        }

        return new JointAngles(buffer);
    }

    /// <summary>Angles on the straight line between two postures; all motions run in step.</summary>
    /// <param name="start">At 0.</param>
    /// <param name="end">At 1.</param>
    /// <param name="part">How far along, 0 to 1.</param>
    public static JointAngles Between(in JointAngles start, in JointAngles end, double part)
    {
        var buffer = default(Buffer);
        for (var i = 0; i < Buffer.Size; i++)
        {
            buffer[i] = start.degrees[i] + (part * (end.degrees[i] - start.degrees[i]));
        }

        return new JointAngles(buffer);
    }

    /// <summary>The same angles with one changed.</summary>
    /// <param name="motion">Which.</param>
    /// <param name="angle">Degrees.</param>
    public JointAngles With(JointMotion motion, double angle)
    {
        var buffer = degrees;
        buffer[(int)motion] = angle;
        return new JointAngles(buffer);
    }

    [InlineArray(Size)]
    private struct Buffer
    {
        public const int Size = (int)JointMotion.AnkleDorsiflexion + 1;

        private double first;
    }
}
