using Shaduf.Steel;

namespace Shaduf.Station;

/// <summary>Reads the figures that a country's annex to the Eurocodes sets otherwise than recommended.</summary>
internal static class NationalReader
{
    public static NationalChoices Read(FieldMap? fields)
    {
        var usual = NationalChoices.Recommended;
        if (fields is null)
        {
            return usual;
        }

        double Factor(string name, double recommended, double from, double to, string about) =>
            fields.Known(
                name,
                Measure.Plain,
                from,
                to,
                FormattableString.Invariant($"{about}; left out: {recommended}.")
            ) ?? recommended;
        var steel = usual.Steel;
        var read = new NationalChoices(
            fields.Text("name", "Whose figures they are: country, annex, year.", 80),
            Factor("permanent", usual.PermanentFactor, 1, 1.5, "Factor on weights that press"),
            Factor("variable", usual.VariableFactor, 1, 2, "Factor on wind, snow and people"),
            Factor("leastWeight", usual.LeastWeightFactor, 0.8, 1, "Factor on weights that hold a footing down"),
            Factor("windBeside", usual.WindBesideFactor, 0, 1, "Share of the wind beside full snow"),
            Factor("snowBeside", usual.SnowBesideFactor, 0, 1, "Share of the snow beside full wind"),
            fields.Known("air", Measure.DensityKgPerM3, 0.8, 1.4, "Density of the air; left out: 1.25 kg/m3.")
                ?? usual.AirKgPerM3
        )
        {
            Steel = new(
                Factor("section", steel.SectionFactor, 1, 1.2, "Factor on the yielding of a section"),
                Factor("buckling", steel.BucklingFactor, 1, 1.2, "Factor on members that buckle"),
                Factor("joint", steel.JointFactor, 1.1, 1.5, "Factor on welds and bolts"),
                Factor("tubeJoint", steel.TubeJointFactor, 1, 1.2, "Factor on joints of hollow sections"),
                Factor("concrete", steel.ConcreteFactor, 1.2, 2, "Factor on concrete"),
                Factor("lasting", steel.LongTermFactor, 0.6, 1, "Factor on concrete under lasting load")
            ),
        };
        fields.Done();
        return read;
    }
}
