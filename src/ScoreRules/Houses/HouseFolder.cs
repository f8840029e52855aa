using ScoreRules.Language.Diagnostics;

namespace ScoreRules.Houses;

/// <summary>
/// Finds and reads the files of a house: all <c>*.rules</c> and <c>*.csv</c> of its folder and those of the shared folder,
/// which is a sibling named <c>shared</c> or the nearest <c>rulesets/shared</c> above.
/// </summary>
public static class HouseFolder
{
    private const string Shared = "shared";

    /// <summary>Reads a house.</summary>
    /// <param name="typed">What the user typed: a folder, or a file that stands for its folder.</param>
    /// <exception cref="HouseException">There is no such folder, or nothing in it.</exception>
    public static HouseSources Read(string typed)
    {
        var folder = FolderOf(typed);
        var own = FilesIn(folder);
        if (own.Count == 0)
        {
            throw new HouseException($"\"{typed}\" holds no rule text: no file in it ends in .rules or .csv. A house is a folder of such files, for example rulesets/longreach.");
        }

        var findings = new DiagnosticBag();
        var reader = new HouseFileReader(findings);
        ReportFolders(folder, findings);
        var files = own.Concat(SharedFiles(folder)).Select(reader.Read).OfType<HouseFile>().OrderBy(file => file.Path, StringComparer.Ordinal);
        return new HouseSources([.. files], findings.ToSorted());
    }

    /// <summary>A house of one text that is not a file, with the shared folder of the current folder.</summary>
    public static HouseSources WithShared(HouseFile text)
    {
        var findings = new DiagnosticBag();
        var reader = new HouseFileReader(findings);
        return new HouseSources([text, .. SharedFiles(".").Select(reader.Read).OfType<HouseFile>()], findings.ToSorted());
    }

    /// <summary>The shared files that a house in this folder would see; the folder need not exist yet.</summary>
    public static HouseSources ReadShared(string folder)
    {
        var findings = new DiagnosticBag();
        var reader = new HouseFileReader(findings);
        return new HouseSources([.. SharedFiles(folder).Select(reader.Read).OfType<HouseFile>()], findings.ToSorted());
    }

    /// <summary>Whether a folder holds rule text.</summary>
    public static bool IsHouse(string folder) => Directory.Exists(folder) && FilesIn(folder).Count > 0;

    /// <summary>The files that a typed name means, without the shared ones: all of a folder, or one file alone.</summary>
    /// <exception cref="HouseException">There is no such folder or file.</exception>
    public static IReadOnlyList<string> OwnFiles(string typed) => File.Exists(typed) ? [typed.Replace('\\', '/')] : FilesIn(FolderOf(typed));

    private static string FolderOf(string typed)
    {
        if (Directory.Exists(typed))
        {
            return typed;
        }

        if (File.Exists(typed))
        {
            var parent = Path.GetDirectoryName(typed);
            return string.IsNullOrEmpty(parent) ? "." : parent;
        }

        throw new HouseException($"There is no folder or file \"{typed}\". Name a house: a folder of .rules files, for example rulesets/longreach.{Nearby(typed)}");
    }

    private static string Nearby(string typed)
    {
        var parent = Path.GetDirectoryName(typed) is { Length: > 0 } above ? above : ".";
        if (!Directory.Exists(parent))
        {
            return "";
        }

        var names = Directory.EnumerateDirectories(parent).Select(folder => Path.GetFileName(folder)!).Order(StringComparer.Ordinal);
        var near = NameSuggester.Nearest(Path.GetFileName(typed), names);
        return near.IsEmpty ? "" : $" Did you mean \"{near[0]}\"?";
    }

    private static List<string> FilesIn(string folder)
    {
        try
        {
            return
            [
                .. Directory.EnumerateFiles(folder).Where(IsRuleText).Select(path => Join(folder, Path.GetFileName(path))),
            ];
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            throw new HouseException($"The folder \"{folder}\" cannot be read: {exception.Message}", exception);
        }
    }

    private static void ReportFolders(string folder, DiagnosticBag findings)
    {
        foreach (var path in Directory.EnumerateDirectories(folder).Where(IsRuleText).Order(StringComparer.Ordinal))
        {
            HouseFileReader.Report(findings, Join(folder, Path.GetFileName(path)), "is a folder, and a file of rule text was expected", "give the folder a name that does not end in .rules or .csv");
        }
    }

    private static bool IsRuleText(string path) =>
        path.EndsWith(".rules", StringComparison.OrdinalIgnoreCase) || path.EndsWith(".csv", StringComparison.OrdinalIgnoreCase);

    private static List<string> SharedFiles(string folder)
    {
        var full = Path.GetFullPath(folder);
        if (string.Equals(Path.GetFileName(full.TrimEnd(Path.DirectorySeparatorChar)), Shared, StringComparison.Ordinal))
        {
            return [];
        }

        var sibling = Join(folder, "../" + Shared);
        var above = Path.GetDirectoryName(full.TrimEnd(Path.DirectorySeparatorChar));
        if (Directory.Exists(Path.Combine(above ?? full, Shared)))
        {
            return FilesIn(Tidy(sibling, folder));
        }

        for (var at = above; at is not null; at = Path.GetDirectoryName(at))
        {
            var candidate = Path.Combine(at, "rulesets", Shared);
            if (Directory.Exists(candidate))
            {
                return FilesIn(candidate);
            }
        }

        return Directory.Exists(Path.Combine("rulesets", Shared)) ? FilesIn("rulesets/" + Shared) : [];
    }

    // "rulesets/longreach/../shared" is shown as "rulesets/shared".
    private static string Tidy(string sibling, string folder)
    {
        var trimmed = folder.Replace('\\', '/').TrimEnd('/');
        var cut = trimmed.LastIndexOf('/');
        var last = trimmed[(cut + 1)..];
        return last is "." or ".." or "" ? sibling : cut < 0 ? Shared : trimmed[..cut] + "/" + Shared;
    }

    private static string Join(string folder, string name)
    {
        var trimmed = folder.Replace('\\', '/').TrimEnd('/');
        return trimmed is "." ? name : trimmed.Length == 0 ? "/" + name : trimmed + "/" + name;
    }
}
