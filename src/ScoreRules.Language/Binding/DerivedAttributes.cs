using System.Collections.Immutable;

namespace ScoreRules.Language.Binding;

/// <summary>
/// What mechanics derives from posture and resistance, under the names by which rules may read it. Parts of a whole and lengths are
/// told in %: 0% is the shortest a muscle gets in any usual movement, 100% the longest.
/// </summary>
public static class DerivedAttributes
{
    /// <summary>Name, unit and meaning of each.</summary>
    public static ImmutableArray<(string Name, string Unit, string Description)> All { get; } =
    [
        ("peak moment", "Nm", "how much the target has to hold at the hardest point, one side"),
        ("angle of peak moment", "°", "the angle of the working joint at which it is hardest"),
        ("loaded length in the long third", "%", "how long and how loaded the target is where it is longest: tension when lengthened"),
        ("longest length under load", "%", "the longest the target gets while it still has to hold at least half of the peak: stretch"),
        ("load profile", "%", "how much of the hardest load is there where the target is long"),
        ("moment-weighted length", "%", "how long the target is where the work is done"),
        ("mean length", "%", "how long the target is over the whole range"),
        ("longest length", "%", "the longest the target gets"),
        ("length excursion", "%", "how much of its range of length the target goes through"),
        ("share of load in the lengthened third", "%", "how much of all the load falls in the third where the target is long; a third is even"),
        ("load at the longest point", "%", "how much of the hardest load is there at the very point where the target is longest; easily moved by a pulley"),
        ("part of the range where the load helps", "%", "where the load moves the joint with the target instead of against it"),
        ("evenness of load", "%", "100% is the same load at every angle"),
        ("wrist moment", "Nm", "the most the wrist has to hold"),
        ("forced forearm rotation", "°", "how far a handle that cannot turn forces the forearm past what it turns freely"),
        ("spine moment", "Nm", "the most the lower back has to hold; 0 with the trunk on a pad"),
        ("working sides", "times", "1 when one side works at a time, so that the trunk must not turn"),
        ("support points", "times", "how many places hold the body"),
    ];
}
