using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Totals;

namespace ShopPlanner.Cli.Work;

/// <summary>One run of the command over the parts of a document: read, add up, ask, print.</summary>
internal static class FromRun
{
    /// <summary>The exit status.</summary>
    public static int Run(
        WorkingForm form,
        string file,
        IReadOnlyList<string> set,
        IReadOnlyDictionary<string, string> given,
        LengthUnit unit,
        WorkOutput output
    )
    {
        if (!PartTotals.Take(form.Name))
            throw new Complaint(
                $"--from: {form.Name} isn't added up from parts: use it with {string.Join(", ", PartTotals.Forms)}"
            );
        var (parts, faults) = FromDocument.Read(file, set);
        if (parts is null)
        {
            foreach (var fault in faults)
                Complaint.Print(fault.ToString());
            return ExitStatus.Refused;
        }

        var total = PartTotals.Of(form, parts, unit, given);
        var refused = total.Questions.Where(question => question.Outcome.Answer is null).ToList();
        if (refused.Count > 0)
        {
            // What is wrong with an input of one's own is the same for every panel.
            WorkRun.Refuse(refused.SelectMany(question => question.Outcome.Faults).Distinct());
            return ExitStatus.Refused;
        }

        Console.Out.Write(output.IsJson ? WorkJson.Total(total, file, unit) : FromText.Of(total, unit, output.HasWorkings));
        return ExitStatus.Done;
    }
}
