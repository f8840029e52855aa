using System.Collections.Immutable;
using System.CommandLine;
using System.Text;
using ScoreRules.Cli.Files;
using ScoreRules.Cli.Terminal;
using ScoreRules.Houses;
using ScoreRules.Publishing;
using ScoreRules.Publishing.Editions;
using ScoreRules.Publishing.Json;
using ScoreRules.Report;

namespace ScoreRules.Cli.Commands;

/// <summary><c>verify</c>: proves published editions.</summary>
internal static class VerifyCommand
{
    /// <summary>The command.</summary>
    public static Command Create(Screen screen)
    {
        var folder = CommonOptions.Names("DIR", "A published edition, or a folder of editions.", 1, 1);
        var format = CommonOptions.Format("text", "json");
        var command = new Command("verify", "Proves published editions: every byte as published, and all that was made from the rules is what they say when judged again.") { folder, format };
        command.SetAction(parsed => Verify(screen, parsed.GetValue(folder)![0], parsed.GetValue(format)!));
        return command;
    }

    private static int Verify(Screen screen, string typed, string format)
    {
        if (!Directory.Exists(typed))
        {
            throw new HouseException($"There is no folder \"{typed}\". Name a published edition, or a folder of editions.");
        }

        var isOne = File.Exists(Path.Combine(typed, EditionFile.Contents));
        var names = isOne ? [typed] : FolderFiles.FoldersWith(typed, EditionFile.Contents).Select(name => PathOf(typed, name)).ToList();
        if (names.Count == 0)
        {
            throw new HouseException($"\"{typed}\" holds no edition: no folder in it has a file \"{EditionFile.Contents}\". scorerules publish HOUSE --out {typed} makes one.");
        }

        var proofs = names.Select(name => (Files: FolderFiles.Read(name), Name: name)).Select(edition => (edition.Files.Count, Proof: EditionProof.Check(edition.Name, edition.Files, (judgement, certainty) => HouseReport.Render(judgement, slots: null, certainty)))).ToList();
        ImmutableArray<string> list = isOne || proofs.Any(proof => !proof.Proof.Faults.IsEmpty) ? [] : ListFaults(typed);
        Print(screen, proofs, list, format);
        return list.IsEmpty && proofs.TrueForAll(proof => proof.Proof.Faults.IsEmpty) ? ExitCode.Fine : ExitCode.Findings;
    }

    private static void Print(Screen screen, List<(int Files, VerifiedPart Proof)> proofs, ImmutableArray<string> list, string format)
    {
        if (format == "json")
        {
            screen.Result(JudgementJson.Verify([.. proofs.Select(proof => proof.Proof)], list));
            return;
        }

        foreach (var (files, proof) in proofs)
        {
            screen.Result(EditionWords.Verified(proof, files) + "\n");
        }

        foreach (var fault in list)
        {
            screen.Result(fault + "\n");
        }
    }

    private static ImmutableArray<string> ListFaults(string folder) =>
    [
        .. EditionFolder.List(EditionFolder.Read(folder)).Where(page => !IsThere(Path.Combine(folder, page.Name), page.Text))
            .Select(page => $"{PathOf(folder, page.Name)} {(File.Exists(Path.Combine(folder, page.Name)) ? "is not what the editions say" : "is missing")}: publish any of them again, and it is written anew."),
    ];

    private static bool IsThere(string path, string text) => File.Exists(path) && File.ReadAllBytes(path).AsSpan().SequenceEqual(Encoding.UTF8.GetBytes(text));

    private static string PathOf(string folder, string name) => $"{folder.Replace('\\', '/').TrimEnd('/')}/{name}";
}
