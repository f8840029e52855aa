using System.Collections.Immutable;
using ScoreRules.Mechanics.Bodies;

namespace ScoreRules.Mechanics.Muscles;

/// <summary>Several muscles taken together by share, such as the elbow extensors. Names are looked up once, so that lengths can then be taken quickly.</summary>
public sealed class MuscleTarget
{
    private MuscleTarget(ImmutableArray<(Muscle Muscle, double Share)> members, ImmutableArray<string> missing, double covered)
    {
        Muscles = [.. members.Select(member => member.Muscle)];
        Shares = [.. members.Select(member => member.Share / members.Sum(other => other.Share))];
        (Missing, CoveredShare) = (missing, covered);
        Reliability = Muscles.IsEmpty ? null : Muscles.Max(muscle => muscle.Reliability);
    }

    /// <summary>The muscles whose length is known, in the order given.</summary>
    public ImmutableArray<Muscle> Muscles { get; }

    /// <summary>Share of each known muscle in all known ones, in the same order; they add up to 1.</summary>
    public ImmutableArray<double> Shares { get; }

    /// <summary>Names given whose length is not known, in the order given; the others stand for them.</summary>
    public ImmutableArray<string> Missing { get; }

    /// <summary>Share of the whole that the known muscles have, 0 to 1.</summary>
    public double CoveredShare { get; }

    /// <summary>That of the least reliable muscle; none when no muscle is known.</summary>
    public Reliability? Reliability { get; }

    /// <summary>Takes muscles together.</summary>
    /// <param name="shares">Name of each muscle with its share; shares over 0 in any unit, only their proportion counts.</param>
    /// <exception cref="ArgumentOutOfRangeException">A share is not a number over 0.</exception>
    public static MuscleTarget Of(IEnumerable<KeyValuePair<string, double>> shares)
    {
        var members = ImmutableArray.CreateBuilder<(Muscle, double)>();
        var missing = ImmutableArray.CreateBuilder<string>();
        var (known, whole) = (0.0, 0.0);
        foreach (var (name, share) in shares)
        {
            whole += share > 0 && double.IsFinite(share) ? share : throw new ArgumentOutOfRangeException(nameof(shares), share, $"The share of {name} is not a number over 0.");
            if (MuscleModel.FindMuscle(name) is { } muscle)
            {
                members.Add((muscle, share));
                known += share;
            }
            else
            {
                missing.Add(name);
            }
        }

        return new MuscleTarget(members.ToImmutable(), missing.ToImmutable(), whole > 0 ? known / whole : 0);
    }

    /// <summary>The same target with only those muscles that cross a joint: the ones a moment about it can load.</summary>
    /// <param name="motion">A motion of the joint.</param>
    public MuscleTarget Across(JointMotion motion)
    {
        var crossing = Muscles.Zip(Shares).Where(member => member.First.Crosses(motion)).ToImmutableArray();
        return new MuscleTarget(crossing, Missing, CoveredShare * crossing.Sum(member => member.Second));
    }

    /// <summary>Share-weighted mean of the lengths of its known muscles, each on its own range.</summary>
    /// <returns>None when no muscle is known.</returns>
    public MuscleLength? LengthAt(in JointCoordinates at)
    {
        var mean = default(MuscleLength);
        for (var i = 0; i < Shares.Length; i++)
        {
            var length = Muscles[i].LengthAt(at);
            mean = new MuscleLength(
                mean.Anatomical + (Shares[i] * length.Anatomical),
                mean.Practical + (Shares[i] * length.Practical),
                Excess.Worse(mean.Worst, length.Worst),
                Math.Max(mean.OffSagittalDegrees, length.OffSagittalDegrees));
        }

        return Shares.IsEmpty ? null : mean;
    }

    /// <summary>Length in a posture; see <see cref="LengthAt(in JointCoordinates)"/>.</summary>
    public MuscleLength? LengthAt(Posture posture) => LengthAt(JointCoordinates.Of(posture));
}
