using Shaduf.Station;

namespace Shaduf.Cli;

/// <summary><c>shaduf check FILE</c>.</summary>
internal static class CheckCommand
{
    /// <summary>Reads a brief and says what will be assumed.</summary>
    /// <param name="path">The brief.</param>
    /// <param name="output">Where to report.</param>
    /// <returns>Exit code.</returns>
    /// <exception cref="BadInputException">The brief, a card or the price book is wrong.</exception>
    public static int Run(string path, TextWriter output)
    {
        var file = StationFile.Read(path);
        output.WriteLine(
            $"{path}: the brief of {file.Brief.Head.Name} can be designed ({file.Shelf.Cards.Count} cards, {file.Prices.Rates.Count} rates)."
        );
        var assumptions = Survey.Of(file.Brief).Assumptions;
        if (assumptions.Count > 0)
        {
            output.WriteLine("It does not say these; the design will take:");
            foreach (var each in assumptions)
            {
                output.WriteLine($"  {each.Field}: {each.Taken}. To find it out: {each.HowToFind}.");
            }
        }

        return ExitCode.Done;
    }
}
