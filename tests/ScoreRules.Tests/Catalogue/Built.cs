using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;
using Shouldly;

namespace ScoreRules.Tests.Catalogue;

/// <summary>A catalogue built in the small house, with its findings.</summary>
internal sealed record Built(MovementCatalogue Catalogue, DiagnosticBag Findings)
{
    public static Built From(string text) => From(MovementText.Parse(text));

    public static Built From(IEnumerable<MovementDeclaration> movements)
    {
        var findings = new DiagnosticBag();
        return new Built(CatalogueBuilder.Build(SmallHouse.With(movements), findings), findings);
    }

    public Movement Movement(string name) => Catalogue.Find(name).ShouldNotBeNull();

    public CatalogueFact Fact(string movement, string attribute) => Movement(movement).Facts[SmallHouse.Attribute(attribute).Index];
}
