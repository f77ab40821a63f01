using System.Collections;
using System.Diagnostics.CodeAnalysis;

namespace Shaduf.Station;

/// <summary>What a remembered step is given.</summary>
/// <param name="Given">Plain values and records, told by their hash: see <see cref="InputHash"/>.</param>
/// <param name="Same">What is never changed, only replaced: cards, prices, what an earlier step gave.</param>
public sealed record StepInputs(IReadOnlyList<object?> Given, IReadOnlyList<object> Same);

/// <summary>
/// What the steps of the last runs came to, each remembered by the hash of its inputs: a step whose inputs have not
/// changed is not run again. A step is given just the parts of the brief that it is remembered by; which of the settled
/// figures it leans on is seen while it runs.
/// </summary>
public sealed class StepMemory
{
    // As many as a person goes back and forth between.
    private const int MostKept = 6;

    private readonly Lock door = new();
    private readonly Dictionary<string, List<Kept>> steps = [];

    private sealed record Kept(
        string Hash,
        IReadOnlyList<object> Same,
        IReadOnlyDictionary<string, double> Figures,
        object? Result
    );

    /// <summary>The result of a step: remembered, or made now.</summary>
    /// <typeparam name="T">What the step gives.</typeparam>
    /// <param name="step">Its name.</param>
    /// <param name="inputs">What it is given.</param>
    /// <param name="survey">The settled figures.</param>
    /// <param name="make">The step; it may read no other survey than the one that it is handed.</param>
    /// <returns>The result.</returns>
    public T Of<T>(string step, StepInputs inputs, Survey survey, Func<Survey, T> make)
    {
        var hash = InputHash.Of(inputs.Given);
        lock (door)
        {
            var known = steps.GetValueOrDefault(step)?.Find(kept => Holds(kept, hash, inputs.Same, survey));
            if (known is not null)
            {
                return (T)known.Result!;
            }
        }

        var seen = new SeenFigures(survey.Figures);
        var result = make(survey with { Figures = seen });
        lock (door)
        {
            if (!steps.TryGetValue(step, out var all))
            {
                steps.Add(step, all = []);
            }

            all.Insert(0, new(hash, inputs.Same, seen.Read, result));
            all.RemoveRange(Math.Min(MostKept, all.Count), Math.Max(0, all.Count - MostKept));
        }

        return result;
    }

    private static bool Holds(Kept kept, string hash, IReadOnlyList<object> same, Survey survey) =>
        kept.Hash == hash
        && kept.Same.SequenceEqual(same, ReferenceEqualityComparer.Instance)
        && kept.Figures.All(figure => survey.Figures.GetValueOrDefault(figure.Key).Equals(figure.Value));

    // The figures, with a note of those that were read; a step may read them from several threads.
    private sealed class SeenFigures(IReadOnlyDictionary<string, double> all) : IReadOnlyDictionary<string, double>
    {
        private readonly System.Collections.Concurrent.ConcurrentDictionary<string, double> read = new();

        public IReadOnlyDictionary<string, double> Read => read;

        public double this[string key] => read.GetOrAdd(key, id => all[id]);

        public IEnumerable<string> Keys => All().Keys;

        public IEnumerable<double> Values => All().Values;

        public int Count => all.Count;

        public bool ContainsKey(string key) => all.ContainsKey(key);

        public bool TryGetValue(string key, [MaybeNullWhen(false)] out double value)
        {
            var known = all.TryGetValue(key, out value);
            if (known)
            {
                read.TryAdd(key, value);
            }

            return known;
        }

        public IEnumerator<KeyValuePair<string, double>> GetEnumerator() => All().GetEnumerator();

        IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

        private IReadOnlyDictionary<string, double> All()
        {
            foreach (var (key, value) in all)
            {
                read.TryAdd(key, value);
            }

            return all;
        }
    }
}

/// <summary>A step that is remembered where there is a memory, and run where there is none.</summary>
internal static class Recalling
{
    public static T Recall<T>(
        this StepMemory? memory,
        string step,
        StepInputs inputs,
        Survey survey,
        Func<Survey, T> make
    ) => memory is null ? make(survey) : memory.Of(step, inputs, survey, make);
}
