using System.Globalization;
using System.Text;
using ScoreRules.Houses;
using ScoreRules.Language.Binding;

namespace ScoreRules.Publishing.Editions;

/// <summary>The name of an edition, which is that of its folder.</summary>
internal static class EditionName
{
    private const int Longest = 100;
    private static readonly string[] Taken = [EditionListFiles.Page, EditionListFiles.Markdown];

    /// <summary>The name of a house and its version, "longreach-3.0.0"; its day where it has no version.</summary>
    public static string Of(HouseHeader house, DateOnly date) =>
        $"{Slug(house.Name)}-{(house.Version.Length > 0 ? Slug(house.Version) : date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture))}";

    /// <summary>A name that somebody chose.</summary>
    /// <exception cref="HouseException">No folder can have it.</exception>
    public static string Chosen(string name) =>
        name.Length is > 0 and <= Longest && name[0] != '.' && name.All(sign => char.IsLetterOrDigit(sign) || sign is '.' or '-' or '_') && !Taken.Contains(name, StringComparer.OrdinalIgnoreCase)
            ? name
            : throw new HouseException($"\"{name}\" cannot name an edition. Use letters, digits, dots and hyphens, such as spring-2031.");

    /// <summary>A name as part of a path: small letters, digits and dots, hyphens for all else.</summary>
    public static string Slug(string name)
    {
        var slug = new StringBuilder(name.Length);
        foreach (var sign in name.ToLowerInvariant())
        {
            if (char.IsLetterOrDigit(sign) || sign == '.')
            {
                slug.Append(sign);
            }
            else if (slug.Length > 0 && slug[^1] != '-')
            {
                slug.Append('-');
            }
        }

        var trimmed = slug.ToString().Trim('-', '.');
        return trimmed.Length == 0 ? "house" : trimmed.Length > Longest / 2 ? trimmed[..(Longest / 2)].Trim('-', '.') : trimmed;
    }
}
