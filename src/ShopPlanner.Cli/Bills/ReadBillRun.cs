using ShopPlanner.Core.Bills;

namespace ShopPlanner.Cli.Bills;

/// <summary>One run of the command: read, write, list what to check.</summary>
internal static class ReadBillRun
{
    private const int MostListed = 100;

    /// <summary>The exit status.</summary>
    public static int Run(string from, string? to)
    {
        var target = TextOutput.At(to, "list of parts", from, "bill");
        var (bill, faults) = DocumentInput.Read(from, "bill", BillText.Read);
        if (bill is null)
        {
            foreach (var fault in faults)
                Complaint.Print(fault.ToString());
            return ExitStatus.Refused;
        }

        target.Write(BillJson.Write(bill));
        List([.. bill.Parts.Where(part => part.Doubts.Length > 0)]);
        return ExitStatus.Done;
    }

    private static void List(List<BillPart> doubtful)
    {
        foreach (var part in doubtful.Take(MostListed))
            Complaint.Print(
                $"line {part.Line}: {(part.Name.Length > 0 ? part.Name : "no name")}: {string.Join(" ", part.Doubts)}"
            );
        if (doubtful.Count > MostListed)
            Complaint.Print($"and {doubtful.Count - MostListed} more to check: see doubt in the list of parts");
    }
}
