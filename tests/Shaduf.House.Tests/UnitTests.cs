using Microsoft.CodeAnalysis;

namespace Shaduf.House.Tests;

/// <summary>The compiler cannot check a double's unit; the eye can, when the name ends in it.</summary>
public sealed class UnitTests
{
    [Fact]
    public void Every_public_double_of_a_trade_says_its_unit() =>
        Rule.Holds("units", House.TradeProjects.SelectMany(project => Unnamed(project.Assembly)));

    [Theory]
    [InlineData("headM", true)]
    [InlineData("flowM3PerS", true)]
    [InlineData("XMm", true)]
    [InlineData("EMPa", true)]
    [InlineData("yieldKWhPerM2Day", true)]
    [InlineData("lossRatio", true)]
    [InlineData("head", false)]
    [InlineData("system", false)]
    [InlineData("headKp", false)]
    [InlineData("HEADM", true)]
    public void A_name_says_its_unit(string name, bool says) => Assert.Equal(says, UnitNames.SaysUnit(name));

    [Theory]
    [InlineData("flowM3PerS", "m³/s", true)]
    [InlineData("flowM3PerS", "m3/s", true)]
    [InlineData("flowM3PerS", "m3/h", false)]
    [InlineData("lossWPerM2K", "W/(m²·K)", true)]
    [InlineData("tiltDeg", "°", true)]
    [InlineData("pressureKPa", "Pa", false)]
    [InlineData("shadeShare", "-", true)]
    public void A_doc_comment_spells_the_unit_of_the_name(string name, string unit, bool agree) =>
        Assert.Equal(agree, UnitNames.Agree([name], unit));

    internal static IEnumerable<Offence> Unnamed(IAssemblySymbol trade) =>
        trade.PublicTypes().SelectMany(type => type.PublicMembers()).SelectMany(Unnamed);

    private static IEnumerable<Offence> Unnamed(ISymbol member) =>
        member switch
        {
            IFieldSymbol field => Numbers(field.Type, field.Name, field),
            IPropertySymbol property => Numbers(property.Type, property.Name, property)
                .Concat(property.Parameters.SelectMany(Unnamed)),
            // A record's positional parameters are its properties.
            IMethodSymbol { MethodKind: MethodKind.Constructor, ContainingType.IsRecord: true } => [],
            IMethodSymbol method => method.Parameters.SelectMany(Unnamed).Concat(UnnamedReturn(method)),
            _ => [],
        };

    private static IEnumerable<Offence> Unnamed(IParameterSymbol parameter) =>
        Numbers(parameter.Type, parameter.Name, parameter);

    private static IEnumerable<Offence> UnnamedReturn(IMethodSymbol method) =>
        method.MethodKind is MethodKind.UserDefinedOperator or MethodKind.Conversion || UnitNames.SaysUnit(method)
            ? []
            : Numbers(method.ReturnType, method.Name, method);

    /// <summary>The doubles that a type holds under a name: itself, elements, tuple parts, a function's result.</summary>
    private static IEnumerable<Offence> Numbers(ITypeSymbol type, string name, ISymbol subject) =>
        type switch
        {
            { SpecialType: SpecialType.System_Double or SpecialType.System_Single } => UnitNames.SaysUnit(name)
                ? []
                :
                [
                    new(
                        subject.Subject(),
                        $"'{name}' does not say its unit: end it in a unit of units.txt, or in Ratio, Factor, Share, "
                            + "Count, Index, Number or Coefficient."
                    ),
                ],
            IArrayTypeSymbol array => Numbers(array.ElementType, name, subject),
            INamedTypeSymbol { IsTupleType: true } tuple => tuple.TupleElements.SelectMany(part =>
                Numbers(part.Type, part.Name, subject)
            ),
            INamedTypeSymbol { TypeArguments: [.., var last] } => Numbers(last, name, subject),
            _ => [],
        };
}
