using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Cutting.Formats;

namespace ShopPlanner.Cli.Cut;

/// <summary>Where the request comes from: a file, or standard input for <c>-</c>.</summary>
internal static class RequestInput
{
    public const string StandardInput = "-";

    public static (CutRequest? Request, ImmutableArray<Fault> Faults) Read(string from)
    {
        if (Directory.Exists(from)) throw new Complaint($"'{from}' is a folder: name the request's file");
        try
        {
            using var stream = from == StandardInput ? Console.OpenStandardInput() : File.OpenRead(from);
            return CutRequestJson.Read(stream);
        }
        catch (Exception exception) when (exception is FileNotFoundException or DirectoryNotFoundException)
        {
            throw new Complaint($"'{from}': there is no such file");
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException)
        {
            throw Complaint.About($"'{from}' cannot be read", exception);
        }
    }
}
