using System.Text;

namespace ScoreRules.Houses;

/// <summary>Reads and replaces single files of rule text, for commands that change them.</summary>
public static class RuleFiles
{
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>The rule files meant: of a folder all its <c>*.rules</c>, by name; a file stands for itself.</summary>
    /// <param name="typed">What the user typed.</param>
    /// <exception cref="HouseException">There is no such folder or file, or no rule text in it.</exception>
    public static IReadOnlyList<string> Named(string typed)
    {
        var files = HouseFolder.OwnFiles(typed).Where(IsRules).Order(StringComparer.Ordinal).ToList();
        return files.Count > 0 ? files : throw new HouseException(File.Exists(typed)
            ? $"\"{typed}\" is not rule text: its name does not end in .rules."
            : $"\"{typed}\" holds no file that ends in .rules.");
    }

    /// <summary>The text of a file, its byte order mark included.</summary>
    /// <exception cref="HouseException">It cannot be read, or is not UTF-8: changing it would then lose something.</exception>
    public static string Read(string path)
    {
        try
        {
            return Strict.GetString(File.ReadAllBytes(path));
        }
        catch (DecoderFallbackException exception)
        {
            throw new HouseException($"\"{path}\" is not written in UTF-8, so it is left as it is. Save it again with the encoding UTF-8.", exception);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            throw new HouseException($"\"{path}\" cannot be read: {exception.Message}", exception);
        }
    }

    /// <summary>Replaces the text of a file in one step: readers see the old text or the new one, never half of it.</summary>
    /// <exception cref="HouseException">It may not be written, or cannot be.</exception>
    public static void Replace(string path, string text)
    {
        try
        {
            // A link keeps pointing where it did; the file it means is replaced.
            var file = new FileInfo(path).ResolveLinkTarget(returnFinalTarget: true)?.FullName ?? path;
            if (File.GetAttributes(file).HasFlag(FileAttributes.ReadOnly))
            {
                throw new HouseException($"\"{path}\" may not be changed: it is marked read-only.");
            }

            WholeFile.Put(file, beside => MakeAlike(beside, file, text));
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            throw new HouseException($"\"{path}\" cannot be written: {exception.Message}", exception);
        }
    }

    /// <summary>Writes a file that may be new, in one step.</summary>
    /// <exception cref="HouseException">It may not be written, or cannot be.</exception>
    public static void Write(string path, string text)
    {
        if (File.Exists(path))
        {
            Replace(path, text);
        }
        else
        {
            WholeFile.Write(path, text);
        }
    }

    private static bool IsRules(string path) => path.EndsWith(".rules", StringComparison.OrdinalIgnoreCase);

    // Who may read the old file may read the new one.
    private static void MakeAlike(string beside, string file, string text)
    {
        File.WriteAllText(beside, text, Strict);
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(beside, File.GetUnixFileMode(file));
        }
    }
}
