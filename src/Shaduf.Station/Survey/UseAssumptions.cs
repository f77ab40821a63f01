using Shaduf.Sun;
using Shaduf.Water;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>What was assumed about uses from tables of their own.</summary>
internal static class UseAssumptions
{
    /// <summary>Levels of supply, animals by the heat, climate over the fields.</summary>
    /// <param name="brief">The brief.</param>
    /// <param name="climate">Settled climate.</param>
    /// <returns>The assumptions.</returns>
    public static IEnumerable<Assumption> Of(Brief brief, MonthlyClimate climate) =>
        [.. Levels(brief.Uses), .. Animals(brief.Uses, climate), .. Fields(brief)];

    private static IEnumerable<Assumption> Levels(UsesBrief uses)
    {
        var heads = uses.School is { } school ? uses.People.Append(school) : uses.People;
        foreach (var each in heads.Where(each => each.EachLPerDay is null))
        {
            if (ServiceLevel.All.FirstOrDefault(level => level.Name == each.Level) is { } level)
            {
                yield return Assumption.Of(
                    "level-litres",
                    Invariant($"{level.LitresPerDay:0.#} L/d, {level.Name}")
                ) with
                {
                    Id = $"level-litres ({each.Name})",
                    Source = level.Source,
                };
            }
        }
    }

    private static IEnumerable<Assumption> Animals(UsesBrief uses, MonthlyClimate climate) =>
        uses
            .Livestock.Where(herd => herd.EachLPerDay is null)
            .Select(herd => herd.Animal)
            .Distinct()
            .Select(animal =>
                Assumption.Of("livestock-litres", HerdYear.Span(HerdYear.LitresOf(animal, climate.AirDegC))) with
                {
                    Id = $"{animal}-litres",
                    Field = $"uses.livestock.each ({animal})",
                    Source = Livestock.Named(animal).Source,
                }
            );

    private static IEnumerable<Assumption> Fields(Brief brief)
    {
        var months = brief.Site.Months;
        var planted = brief.Uses.Plots.Where(plot => plot.Planting is not null).ToList();
        if (planted.Count == 0)
        {
            yield break;
        }

        if (brief.Site.Field.Months.Count(month => month.RainMm is null) is > 0 and var rainless)
        {
            yield return Assumption.Of("rain", Invariant($"0 mm in {rainless} months"));
        }

        if (months.Count(month => month is not { HighDegC: not null, LowDegC: not null }) is > 0 and var swingless)
        {
            yield return Assumption.Of("day-swing", Invariant($"from the sun in {swingless} months"));
        }

        if (!FieldYear.IsFull(brief.Site))
        {
            yield return Assumption.Of("moisture", "temperature alone, by Hargreaves");
        }

        foreach (
            var crop in planted.Select(plot => plot.Planting!.Curve.Crop).Distinct().Where(CropCurve.Names.Contains)
        )
        {
            yield return Assumption.Of("crop", $"coefficients of the table for {crop}") with
            {
                Id = $"crop ({crop})",
                Source = CropCurve.SourceOf(crop),
            };
        }
    }
}
