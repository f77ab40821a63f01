namespace Shaduf.Station.Tests;

public sealed class StepMemoryTests
{
    private static readonly Survey s_survey = Survey.Of(StationFile.Read(Examples.PathOf("homestead")).Brief);

    private readonly StepMemory memory = new();
    private readonly object cards = new();
    private int runs;

    [Fact]
    public void A_step_with_the_same_inputs_is_not_run_again()
    {
        Assert.Equal(Run(1, s_survey), Run(1, s_survey));
        Assert.Equal(1, runs);
    }

    [Fact]
    public void Another_input_other_cards_and_another_figure_that_it_reads_run_it_again()
    {
        Run(1, s_survey);
        Run(2, s_survey);
        Run(1, With(s_survey, "albedo", 0.5));
        memory.Of("step", new([1], [new object()]), s_survey, Step);
        Assert.Equal(4, runs);
    }

    [Fact]
    public void A_figure_that_it_does_not_read_does_not_run_it_again()
    {
        Run(1, s_survey);
        Run(1, With(s_survey, "tax", 0.31));
        Assert.Equal(1, runs);
    }

    [Fact]
    public void A_step_that_reads_all_figures_leans_on_all()
    {
        int All(Survey survey) => survey.Figures.Count(figure => figure.Value > 0) + ++runs;
        memory.Of("all", new([], []), s_survey, All);
        memory.Of("all", new([], []), With(s_survey, "tax", 0.31), All);
        Assert.Equal(2, runs);
    }

    [Fact]
    public void Back_to_a_brief_of_before_is_remembered_and_one_of_long_ago_is_not()
    {
        foreach (var input in Enumerable.Range(0, 7))
        {
            Run(input, s_survey);
        }

        Run(6, s_survey);
        Run(1, s_survey);
        Assert.Equal(7, runs);
        Run(0, s_survey);
        Assert.Equal(8, runs);
    }

    private double Run(int input, Survey survey) => memory.Of("step", new([input], [cards]), survey, Step);

    private double Step(Survey survey)
    {
        runs++;
        return survey["albedo"];
    }

    private static Survey With(Survey survey, string id, double value) =>
        survey with
        {
            Figures = new Dictionary<string, double>(survey.Figures) { [id] = value },
        };
}
