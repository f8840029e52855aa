using System.CommandLine;
using ScoreRules.Cli.Files;
using ScoreRules.Cli.Terminal;
using ScoreRules.Guarding;
using ScoreRules.Houses;
using ScoreRules.Publishing.Editions;
using ScoreRules.Report;

namespace ScoreRules.Cli.Commands;

/// <summary><c>publish</c>: freezes an edition of a house.</summary>
internal static class PublishCommand
{
    /// <summary>The command.</summary>
    public static Command Create(Screen screen)
    {
        var house = CommonOptions.Names("HOUSE", "A folder of rule text; left out, the current folder.", 0, 1);
        var folder = new Option<string?>("--out") { Description = "The folder for editions; this one gets a folder of its own in it.", HelpName = "DIR" };
        var date = CommonOptions.Date();
        var name = new Option<string?>("--edition") { Description = "Name of the edition's folder; left out, the house and its version, such as longreach-3.0.0.", HelpName = "NAME" };
        var bare = new Option<bool>("--without-page") { Description = "Leave the web page out, which is the largest file." };
        var replace = new Option<bool>("--replace") { Description = "Replace an edition of that name that is there and differs." };
        var command = new Command("publish", "Freezes an edition of a house: its rule text, its rankings in every form, and a list of hashes; only if its test passes.") { house, folder, date, name, bare, replace };
        command.SetAction(parsed =>
        {
            var typed = HouseChoice.Of(parsed.GetValue(house));
            if (parsed.GetValue(folder) is not { Length: > 0 } shelf)
            {
                throw new HouseException($"Where to? Type: scorerules publish {typed} --out DIR, for example editions.");
            }

            var judgement = Judge.Run(HouseFolder.Read(typed), profile: null, parsed.GetValue(date));
            if (!TestRule.Passes(judgement))
            {
                return Refuse(screen, judgement, typed);
            }

            var request = new EditionRequest(parsed.GetValue(bare) ? null : (judged, certainty) => HouseReport.Render(judged, slots: null, certainty)) { Date = parsed.GetValue(date), Name = parsed.GetValue(name) };
            return Write(screen, EditionPress.Make(judgement, request), shelf, parsed.GetValue(replace));
        });
        return command;
    }

    private static int Refuse(Screen screen, Judgement judgement, string typed)
    {
        FindingsPrinter.Print(TestRule.Failing(judgement), screen.Message, brief: false);
        foreach (var failed in judgement.Expectations.Where(result => !result.Holds))
        {
            screen.Error($"{failed.Expectation.Info.Location}: an expectation fails: {failed.Found}");
        }

        screen.Error($"Nothing is published: a house is published only when its test passes. scorerules test {typed} shows the expectations.");
        return ExitCode.Findings;
    }

    private static int Write(Screen screen, EditionDraft draft, string folder, bool replace)
    {
        var place = PlaceOf(folder, draft.Name);

        // What cannot be listed afterwards is found before anything is written.
        var others = EditionFolder.Read(folder).Where(edition => edition.Name != draft.Name).ToList();
        using var shelf = Shelf.Open(folder);
        var found = Directory.Exists(place) ? FolderFiles.Read(place) : null;
        if (found is null || !draft.IsSame(found))
        {
            if (found is not null && !replace)
            {
                throw new HouseException($"\"{place}\" is there already and differs, so it is left as it is. Give the house a new version, name this edition with --edition NAME, or replace it with --replace.");
            }

            shelf.Put(draft.Name, draft.Files.Select(file => (file.Path, file.Bytes)));
        }

        EditionFolder.WriteList(folder, [.. others, PublishedEdition.Read(draft.Name, draft.Files.ToDictionary(file => file.Path, file => file.Bytes, StringComparer.Ordinal))]);
        screen.Result($"{place}\n");
        if (found is not null && draft.IsSame(found))
        {
            screen.Error("It was published before, with the same bytes.");
        }

        return ExitCode.Fine;
    }

    private static string PlaceOf(string folder, string name) => $"{folder.Replace('\\', '/').TrimEnd('/')}/{name}";
}
