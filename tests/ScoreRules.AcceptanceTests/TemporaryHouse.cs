namespace ScoreRules.AcceptanceTests;

/// <summary>A folder with one file of rule text, gone after the test.</summary>
internal sealed class TemporaryHouse : IDisposable
{
    public TemporaryHouse(string rules, string name = "house.rules")
    {
        Path = Directory.CreateTempSubdirectory("scorerules").FullName;
        Write(name, rules);
    }

    public string Path { get; }

    public void Write(string name, string text) => File.WriteAllText(System.IO.Path.Combine(Path, name), text);

    public string Read(string name) => File.ReadAllText(System.IO.Path.Combine(Path, name));

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
