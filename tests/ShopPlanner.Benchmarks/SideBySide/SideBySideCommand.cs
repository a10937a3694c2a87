using System.Globalization;
using System.Text.Json;

namespace ShopPlanner.Benchmarks;

/// <summary>
/// <c>sidebyside PATH [--seconds S] [--take N] [--kerf K] [--workers N] [--json FILE] [--packers FOLDER] [--verbose]</c>: the
/// planner beside simple and general-purpose ways to answer the same instances, each with the same seconds, in one run. A run
/// is faulty, exit code 1, when an answer breaks a rule or two answers contradict each other.
/// </summary>
public static class SideBySideCommand
{
    public static int Run(IReadOnlyList<string> words)
    {
        var options = Options.Parse(words, ["seconds", "take", "kerf", "workers", "json", "packers"], ["verbose"]);
        using var lines = new JsonLines(options.Text("json"));
        var records = InstanceFiles.Sample(InstanceFiles.Read(options.Path), options.Whole("take", 0)).ToLookup(IsSheets);
        var boards = new BoardMethods(options);
        var faultless = true;
        foreach (var record in records[false])
            faultless &= Note(boards.Answer(record), boards.Table, options, lines);
        if (records[true].Any())
            faultless &= Sheets(records[true], options, lines);
        boards.Table.Print(Console.Out);
        return faultless ? 0 : 1;
    }

    private static bool Sheets(IEnumerable<JsonElement> records, Options options, JsonLines lines)
    {
        var sheets = new SheetMethods(options, OutsidePackers.Find(options.Text("packers")));
        var tables = new Dictionary<Turning, MethodTable>
        {
            [Turning.Free] = new(sheets.Title("Parts may be turned.")),
            [Turning.Fixed] = new(sheets.Title("Parts lie as written.")),
        };
        var faultless = true;
        foreach (var instance in records.SelectMany(record => SheetInstance.ReadAll(record, options.Whole("kerf", 0))))
            faultless &= Note(sheets.Answer(instance), tables[instance.Turning], options, lines);
        foreach (var table in tables.Values)
            table.Print(Console.Out);
        return faultless;
    }

    private static bool Note(Answers answers, MethodTable table, Options options, JsonLines lines)
    {
        table.Add(answers.Outcomes);
        foreach (var outcome in answers.Outcomes)
        {
            lines.Write(outcome);
            if (options.Has("verbose"))
                Tell(outcome);
        }

        foreach (var fault in answers.Faults)
            Console.Error.WriteLine(fault);
        return answers.Faults.Count == 0;
    }

    private static bool IsSheets(JsonElement record) => record.TryGetProperty("sheet", out _);

    private static void Tell(MethodOutcome o)
    {
        var value = o.Value?.ToString(CultureInfo.InvariantCulture) ?? "no answer";
        Console.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{o.Set}/{o.Name}: {o.Method} {value} published {o.Best} {(o.Proven ? "proven" : "OPEN")} {o.Seconds:0.000} s"
            )
        );
    }
}

/// <summary>What all methods made of one instance, and what is wrong with it.</summary>
public sealed record Answers(IReadOnlyList<MethodOutcome> Outcomes, IReadOnlyList<string> Faults);
