namespace ScoreRules.Tests.Support;

/// <summary>Finds files of the repository from wherever the tests run.</summary>
internal static class Repository
{
    public static string Root { get; } = FindRoot();

    public static string PathOf(params string[] parts) => Path.Combine([Root, .. parts]);

    public static string Read(params string[] parts) => File.ReadAllText(PathOf(parts));

    private static string FindRoot()
    {
        var at = AppContext.BaseDirectory;
        while (at is not null && !File.Exists(Path.Combine(at, "ScoreRules.sln")))
        {
            at = Path.GetDirectoryName(at);
        }

        return at ?? throw new InvalidOperationException("The tests run outside the repository.");
    }
}
