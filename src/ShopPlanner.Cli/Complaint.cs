namespace ShopPlanner.Cli;

/// <summary>Something a person must mend before the command can do its work: said in one line, and nothing is written.</summary>
/// <param name="message">What, where and what would be right.</param>
internal sealed class Complaint(string message) : Exception(message)
{
    /// <summary>A complaint about a file the system would not read or write.</summary>
    public static Complaint About(string what, Exception cause) => new($"{what}: {cause.Message}");

    /// <summary>Prints one line on standard error. A document's own characters never steer the terminal.</summary>
    public static void Print(string line) =>
        Console.Error.WriteLine(string.Concat(line.Select(c => char.IsControl(c) || c is '\u2028' or '\u2029' ? ' ' : c)));
}
