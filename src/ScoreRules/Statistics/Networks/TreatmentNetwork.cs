namespace ScoreRules.Statistics.Networks;

/// <summary>Studies whose treatments hang together: each can be compared with each other one, directly or by a chain of studies.</summary>
public sealed class TreatmentNetwork
{
    private readonly Dictionary<string, int> places;

    private TreatmentNetwork(IReadOnlyList<NetworkStudy> studies)
    {
        Studies = studies;
        Treatments = [.. studies.SelectMany(study => study.Treatments).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];
        places = Treatments.Index().ToDictionary(pair => pair.Item, pair => pair.Index, StringComparer.Ordinal);
    }

    /// <summary>Its treatments in ordinal order.</summary>
    public IReadOnlyList<string> Treatments { get; }

    /// <summary>Its studies, in ordinal order of their names, so that their order of entry does not matter to the last digit.</summary>
    public IReadOnlyList<NetworkStudy> Studies { get; }

    /// <summary>Differences less what is estimated: the sum of (arms - 1) over the studies, less (treatments - 1).</summary>
    public int Degrees => Studies.Sum(study => study.Treatments.Count - 1) - (Treatments.Count - 1);

    /// <summary>Joins studies.</summary>
    /// <param name="studies">One study or more.</param>
    /// <exception cref="StatisticsInputException">No study, or treatments that no chain of studies joins; the message names the parts.</exception>
    public static TreatmentNetwork Of(IEnumerable<NetworkStudy> studies)
    {
        IReadOnlyList<NetworkStudy> list = [.. studies.OrderBy(study => study.Name, StringComparer.Ordinal).ThenBy(study => study.Design, StringComparer.Ordinal)];
        if (list.Count == 0)
        {
            throw new StatisticsInputException("A network takes at least one study.");
        }

        var parts = Parts(list);
        return parts.Count == 1
            ? new TreatmentNetwork(list)
            : throw new StatisticsInputException($"No study joins the parts of this network: {string.Join("; ", parts.Select(part => string.Join(", ", part)))}. Look at each part by itself, or add a study between them.");
    }

    /// <summary>The parts that studies join, each in ordinal order, the parts by their first treatment.</summary>
    public static IReadOnlyList<IReadOnlyList<string>> Parts(IReadOnlyList<NetworkStudy> studies)
    {
        var parts = new List<HashSet<string>>();
        foreach (var study in studies)
        {
            var joined = parts.Where(part => part.Overlaps(study.Treatments)).ToList();
            parts.RemoveAll(joined.Contains);
            parts.Add([.. joined.SelectMany(part => part), .. study.Treatments]);
        }

        return [.. parts.Select(part => (IReadOnlyList<string>)[.. part.Order(StringComparer.Ordinal)]).OrderBy(part => part[0], StringComparer.Ordinal)];
    }

    /// <summary>The place of a treatment in <see cref="Treatments"/>.</summary>
    internal int Place(string treatment) =>
        places.TryGetValue(treatment, out var place) ? place : throw new StatisticsInputException($"No study of this network has the treatment \"{treatment}\".");
}
