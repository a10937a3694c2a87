using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cli.Work;

/// <summary>How an answer is printed.</summary>
/// <param name="HasWorkings">Whether it says how each figure came about; JSON always does.</param>
/// <param name="IsJson">Whether it is for a program.</param>
internal sealed record WorkOutput(bool HasWorkings, bool IsJson);

/// <summary>What a working is added up from.</summary>
/// <param name="File">A design or a cut request; null where all is entered.</param>
/// <param name="Set">Other values for the design's dimensions.</param>
internal sealed record WorkSource(string? File, IReadOnlyList<string> Set);

/// <summary>One run of the command: find the form, read the pairs, work it out, print.</summary>
internal static class WorkRun
{
    /// <summary>The exit status.</summary>
    public static int Run(
        string? name,
        IReadOnlyList<string> pairs,
        WorkSource source,
        LengthUnit unit,
        bool keys,
        WorkOutput output
    )
    {
        if (source is { File: null, Set.Count: > 0 })
            throw new Complaint("--set: name the design with --from");
        if (name is null)
        {
            Print(output.IsJson ? WorkJson.List() : WorkText.List());
            return ExitStatus.Done;
        }

        var form = Find(name);
        if (!keys)
            return source.File is { } file
                ? FromRun.Run(form, file, source.Set, Read(pairs), unit, output)
                : WorkOut(form, Read(pairs), unit, output);
        Print(output.IsJson ? WorkJson.Keys(form) : WorkText.Keys(form));
        return ExitStatus.Done;
    }

    private static int WorkOut(WorkingForm form, Dictionary<string, string> given, LengthUnit unit, WorkOutput output)
    {
        var (answer, faults) = form.Run(given, unit);
        if (answer is null)
        {
            Refuse(faults);
            return ExitStatus.Refused;
        }

        Print(output.IsJson ? WorkJson.Answer(form, answer, unit) : WorkText.Answer(answer, unit, output.HasWorkings));
        return ExitStatus.Done;
    }

    /// <summary>Prints a line for each fault.</summary>
    public static void Refuse(IEnumerable<Fault> faults)
    {
        foreach (var fault in faults)
            Complaint.Print(Line(fault));
    }

    private static WorkingForm Find(string name) =>
        WorkingForms.TryFind(name, out var form)
            ? form
            : throw new Complaint(
                $"'{name}' is not a calculation: choose one of {string.Join(", ", WorkingForms.All.Select(one => one.Name))}"
            );

    private static Dictionary<string, string> Read(IReadOnlyList<string> pairs)
    {
        var given = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase);
        foreach (var pair in pairs)
        {
            var (key, text) = pair.Split('=', 2) is [{ Length: > 0 } left, var right] ? (left.Trim(), right) : throw NoPair(pair);
            if (!given.TryAdd(key, text))
                throw new Complaint($"{key}: '{text}' is a second value, after '{given[key]}': give each key once");
        }

        return given;
    }

    private static Complaint NoPair(string text) =>
        new($"'{text}' is not key=value: write key=value, in quotes if it has a space: \"width=34 1/2\"");

    // What is missing has no offending text to quote.
    private static string Line(Fault fault) => fault.Value.Length == 0 ? $"{fault.Field} {fault.Message}" : fault.ToString();

    private static void Print(string text) => Console.Out.Write(text);
}
