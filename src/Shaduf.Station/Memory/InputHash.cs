using System.Collections;
using System.Reflection;
using System.Runtime.InteropServices;
using System.Security.Cryptography;
using System.Text;

namespace Shaduf.Station;

/// <summary>What a step was given, in short: equal records give equal hashes, however they came about.</summary>
public static class InputHash
{
    // Deeper than any record of a brief; a circle would never end.
    private const int DeepestLevel = 24;

    /// <summary>The hash of some inputs in their order.</summary>
    /// <param name="inputs">Numbers, words, records, and lists of them; null is a value too.</param>
    /// <returns>SHA-256, 64 hexadecimal digits.</returns>
    /// <exception cref="ArgumentException">An input is no plain value: it refers to itself, or is nested too deep.</exception>
    public static string Of(params IReadOnlyList<object?> inputs)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var input in inputs)
        {
            Add(hash, input, 0);
        }

        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }

    private static void Add(IncrementalHash hash, object? value, int level)
    {
        if (level > DeepestLevel)
        {
            throw new ArgumentException($"{value?.GetType().Name} is nested deeper than {DeepestLevel} levels");
        }

        switch (value)
        {
            case null:
                Mark(hash, 0);
                break;
            case WeatherRecord record:
                Add(hash, record.Hash, level + 1);
                Add(hash, record.Place, level + 1);
                break;
            case double number:
                Mark(hash, 1);
                hash.AppendData(MemoryMarshal.AsBytes(new ReadOnlySpan<double>(in number)));
                break;
            case string text:
                Mark(hash, 2);
                hash.AppendData(Encoding.UTF8.GetBytes(text));
                Mark(hash, 0);
                break;
            case IEnumerable<double> row:
                Mark(hash, 3);
                hash.AppendData(MemoryMarshal.AsBytes<double>([.. row]));
                break;
            case IEnumerable many:
                foreach (var each in many)
                {
                    Mark(hash, 4);
                    Add(hash, each, level + 1);
                }

                Mark(hash, 5);
                break;
            case IConvertible or DateOnly or TimeSpan or DateTimeOffset:
                Add(hash, $"{value.GetType().Name} {string.Create(null, $"{value}")}", level + 1);
                break;
            default:
                AddFields(hash, value, level);
                break;
        }
    }

    private static void AddFields(IncrementalHash hash, object record, int level)
    {
        var type = record.GetType();
        Add(hash, type.Name, level + 1);
        foreach (var field in Fields(type))
        {
            Add(hash, field.GetValue(record), level + 1);
        }
    }

    private static FieldInfo[] Fields(Type type)
    {
        var all = new List<FieldInfo>();
        for (var each = type; each is not null && each != typeof(object); each = each.BaseType)
        {
            all.AddRange(
                each.GetFields(
                    BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly
                )
            );
        }

        return [.. all];
    }

    private static void Mark(IncrementalHash hash, byte mark) => hash.AppendData([mark]);
}
