namespace ScoreRules.Houses;

/// <summary>
/// A folder in which whole folders are put, one at a time: each is made under a hidden name beside its place and then moved there,
/// so that a reader meets the old one or the new one, never half of one. Whatever an interrupted run left is put right when it is opened.
/// </summary>
public sealed class Shelf : IDisposable
{
    private const string Made = ".part";
    private const string Kept = ".old";
    private readonly string folder;
    private readonly FileStream turn;

    private Shelf(string folder, FileStream turn) => (this.folder, this.turn) = (folder, turn);

    /// <summary>Opens it, and makes it if it is not there; until it is closed, nobody else can.</summary>
    /// <exception cref="HouseException">It cannot be written, or somebody else has it open.</exception>
    public static Shelf Open(string folder)
    {
        if (File.Exists(folder))
        {
            throw new HouseException($"\"{folder}\" is a file, and a folder was expected. Name a folder; it need not be there yet.");
        }

        return Trying(folder, () =>
        {
            Directory.CreateDirectory(folder);
            var shelf = new Shelf(folder, Turn(folder));
            shelf.PutRight();
            return shelf;
        });
    }

    /// <summary>Puts a folder in its place.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="files">Its files: place below the folder, with forward slashes, and bytes.</param>
    /// <exception cref="HouseException">It cannot be written; what stood there stands there still.</exception>
    public void Put(string name, IEnumerable<(string Path, byte[] Bytes)> files)
    {
        var (place, made, kept) = (Path.Combine(folder, name), Hidden(name, Made), Hidden(name, Kept));
        Trying(place, () =>
        {
            try
            {
                foreach (var (path, bytes) in files)
                {
                    Write(Path.Combine(made, path), bytes);
                }

                if (Directory.Exists(place))
                {
                    Directory.Move(place, kept);
                }

                Directory.Move(made, place);
                return true;
            }
            finally
            {
                PutRight();
            }
        });
    }

    /// <summary>Gives the folder back to others.</summary>
    public void Dispose() => turn.Dispose();

    private static FileStream Turn(string folder)
    {
        try
        {
            return new FileStream(Path.Combine(folder, ".publishing"), FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, 1, FileOptions.DeleteOnClose);
        }
        catch (IOException problem) when (File.Exists(Path.Combine(folder, ".publishing")))
        {
            throw new HouseException($"Another run is publishing to \"{folder}\". Wait until it is done, then try again.", problem);
        }
    }

    private string Hidden(string name, string mark) => Path.Combine(folder, "." + name + mark);

    // What was moved away goes back where nothing new came; all else is rubbish.
    private void PutRight()
    {
        foreach (var kept in Directory.EnumerateDirectories(folder, ".*" + Kept).ToList())
        {
            var place = Path.Combine(folder, Path.GetFileName(kept)[1..^Kept.Length]);
            if (Directory.Exists(place))
            {
                Directory.Delete(kept, recursive: true);
            }
            else
            {
                Directory.Move(kept, place);
            }
        }

        foreach (var made in Directory.EnumerateDirectories(folder, ".*" + Made).ToList())
        {
            Directory.Delete(made, recursive: true);
        }
    }

    private static void Write(string path, byte[] bytes)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        using var file = new FileStream(path, FileMode.CreateNew);
        file.Write(bytes);
        file.Flush(flushToDisk: true);
    }

    private static T Trying<T>(string place, Func<T> work)
    {
        try
        {
            return work();
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            throw new HouseException($"\"{place}\" cannot be written: {problem.Message}", problem);
        }
    }
}
