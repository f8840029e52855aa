using ScoreRules.Houses;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Houses;

public sealed class ShelfTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("scorerules").FullName;

    [Fact]
    public void A_folder_whose_files_cannot_all_be_written_leaves_the_old_one_whole()
    {
        Put("first");
        using (var shelf = Shelf.Open(folder))
        {
            Should.Throw<HouseException>(() => shelf.Put("a", Failing())).Message.ShouldContain("No space left on the device");
        }

        Names().ShouldBe(["a/one.txt"]);
        File.ReadAllText(Path.Combine(folder, "a", "one.txt")).ShouldBe("first");
    }

    [Theory]
    [InlineData(false, "old")]
    [InlineData(true, "new")]
    public void What_an_interrupted_run_left_is_put_right(bool hasCome, string kept)
    {
        // Moved away and nothing new come: it goes back. Something new come: the old one is thrown away.
        Write(".a.old", "old");
        if (hasCome)
        {
            Write("a", "new");
        }

        Write(".b.part", "half");
        Shelf.Open(folder).Dispose();
        Names().ShouldBe(["a/one.txt"]);
        File.ReadAllText(Path.Combine(folder, "a", "one.txt")).ShouldBe(kept);
    }

    [Fact]
    public void Two_runs_at_once_are_told_to_wait()
    {
        using var shelf = Shelf.Open(folder);
        Should.Throw<HouseException>(() => Shelf.Open(folder)).Message.ShouldContain("Another run is publishing");
    }

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private static IEnumerable<(string Path, byte[] Bytes)> Failing()
    {
        yield return ("one.txt", [1, 2, 3]);
        throw new IOException("No space left on the device");
    }

    private void Put(string text)
    {
        using var shelf = Shelf.Open(folder);
        shelf.Put("a", [("one.txt", System.Text.Encoding.UTF8.GetBytes(text))]);
    }

    private void Write(string name, string text)
    {
        Directory.CreateDirectory(Path.Combine(folder, name));
        File.WriteAllText(Path.Combine(folder, name, "one.txt"), text);
    }

    private SortedDictionary<string, byte[]>.KeyCollection Names() => FolderFiles.Read(folder).Keys;
}
