namespace ScoreRules.Tests.Guarding;

/// <summary>A house small enough to work out by hand: four raises, measured against the plain one.</summary>
/// <remarks>
/// load: plain 2, heavy 4, light 0, seated 3; steady: plain 2, heavy 0, light 4, seated 4. Weights 30 and 10 give
/// plain 37.5 + 12.5 = 50; heavy 75 + 0 = 75; light 0 + 25 = 25; seated 56.25 + 25 = 81.25, and 5 more for sitting.
/// </remarks>
internal static class CalfHouse
{
    public const string Words = """
        attribute load
          rated 0 to 4

        attribute steady
          rated 0 to 4

        attribute posture
          one of standing, sitting

        muscle soleus

        target calves
          made of soleus 1 part
          benchmark plain raise

        """;

    public const string Movements = """

        movement plain raise
          trains calves
          load is 2
          steady is 2
          posture is standing

        movement heavy raise
          trains calves
          load is 4
          steady is 0
          posture is standing

        movement light raise
          trains calves
          load is 0
          steady is 4
          posture is standing

        movement seated raise
          trains calves
          load is 3
          steady is 4
          posture is sitting

        """;

    public const string Rules = """

        tiers
          High is from 20 points above the benchmark
          Middle is from 10 points below the benchmark
          Low is the rest

        criterion load
          counts 30
          reads load
          worth 0% at 0, 100% at 4

        criterion steady
          counts 10
          reads steady
          worth 0% at 0, 100% at 4

        give 5 points
          named sits
          when posture is sitting

        """;

    public static Judgement Judged(string rules = Rules, string more = "", string movements = Movements) => Support.Judged.Text(Words + movements + rules + "\n" + more);
}
