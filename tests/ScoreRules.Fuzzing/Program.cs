using System.Text;
using ScoreRules.Fuzzing;
using ScoreRules.Fuzzing.Targets;
using SharpFuzz;

switch (args)
{
    case ["seeds", var folder]:
        Seeds.Write(folder);
        return 0;
    case ["replay", var name, .. var files] when FuzzTargets.All.TryGetValue(name, out var again):
        Array.ForEach(files, file => again(File.ReadAllText(file)));
        return 0;
    case [var name] when FuzzTargets.All.TryGetValue(name, out var target):
        Fuzzer.Run(stream =>
        {
            using var reader = new StreamReader(stream, Encoding.UTF8);
            target(reader.ReadToEnd());
        });
        return 0;
    default:
        Console.Error.WriteLine($"Say what to feed ({string.Join(", ", FuzzTargets.All.Keys)}), or: seeds FOLDER, or: replay TARGET FILE...");
        return 2;
}
