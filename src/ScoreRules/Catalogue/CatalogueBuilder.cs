using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;

namespace ScoreRules.Catalogue;

/// <summary>Makes the catalogue out of declared movements: orders them by name and fills in what they take over through <c>like</c>.</summary>
public static class CatalogueBuilder
{
    /// <summary>
    /// All movements of a house. The result does not depend on the order of the declarations; of two with one name (which
    /// the binder has reported) the one whose place comes first is kept.
    /// </summary>
    /// <param name="ruleset">The house.</param>
    /// <param name="findings">Receives SR2004 (a spreadsheet's <c>like</c> that names no movement), SR7001, SR7004, SR7005, SR7006 and SR7008.</param>
    public static MovementCatalogue Build(BoundRuleset ruleset, DiagnosticBag findings)
    {
        var declarations = new DeclarationTable(ruleset.Movements);
        var links = LikeLinks.Find(declarations, findings);
        var resolved = new Inheritance(declarations, links, ruleset.Attributes.Length, findings).ResolveAll();
        foreach (var movement in resolved.Where(movement => movement.LacksTarget))
        {
            findings.Add(MovementFindings.TrainsNothing(movement, ruleset.Targets));
        }

        return new MovementCatalogue([.. resolved.Select((movement, index) => movement.ToMovement(index))]);
    }
}
