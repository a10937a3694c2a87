using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cli.Work;

/// <summary>How an answer is printed.</summary>
/// <param name="HasWorkings">Whether it says how each figure came about; JSON always does.</param>
/// <param name="IsJson">Whether it is for a program.</param>
internal sealed record WorkOutput(bool HasWorkings, bool IsJson);

/// <summary>One run of the command: find the form, read the pairs, work it out, print.</summary>
internal static class WorkRun
{
    /// <summary>The exit status.</summary>
    public static int Run(string? name, IReadOnlyList<string> pairs, LengthUnit unit, bool keys, WorkOutput output)
    {
        if (name is null)
        {
            Print(output.IsJson ? WorkJson.List() : WorkText.List());
            return ExitStatus.Done;
        }

        var form = Find(name);
        if (!keys)
            return WorkOut(form, Read(pairs), unit, output);
        Print(output.IsJson ? WorkJson.Keys(form) : WorkText.Keys(form));
        return ExitStatus.Done;
    }

    private static int WorkOut(WorkingForm form, Dictionary<string, string> given, LengthUnit unit, WorkOutput output)
    {
        var (answer, faults) = form.Run(given, unit);
        if (answer is null)
        {
            foreach (var fault in faults)
                Complaint.Print(Line(fault));
            return ExitStatus.Refused;
        }

        Print(output.IsJson ? WorkJson.Answer(form, answer, unit) : WorkText.Answer(answer, unit, output.HasWorkings));
        return ExitStatus.Done;
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
