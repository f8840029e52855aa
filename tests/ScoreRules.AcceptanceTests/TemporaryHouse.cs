namespace ScoreRules.AcceptanceTests;

/// <summary>A folder with one file of rule text, gone after the test.</summary>
internal sealed class TemporaryHouse : IDisposable
{
    public TemporaryHouse(string rules, string name = "house.rules")
    {
        Path = Directory.CreateTempSubdirectory("scorerules").FullName;
        File.WriteAllText(System.IO.Path.Combine(Path, name), rules);
    }

    public string Path { get; }

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
