using System.ComponentModel;
using System.Diagnostics;
using System.Text.Json;
using ShopPlanner.Cutting.Problems;
using ShopPlanner.Cutting.Sheets;

namespace ShopPlanner.Benchmarks;

/// <summary>What one packer made of a problem.</summary>
/// <param name="Seconds">Its own, without the start of its program.</param>
public sealed record PackerAnswer(string Name, double Seconds, Packing Packing);

/// <summary>The rectangle packers beside <c>packers/pack.js</c>, which Node runs.</summary>
public sealed class OutsidePackers
{
    private const string Script = "pack.js";
    private readonly string folder;

    private OutsidePackers(string folder) => this.folder = folder;

    /// <summary>Null, and a line that says what is missing, where they cannot be run.</summary>
    /// <param name="folder">Holds the script; null for the one beside this program.</param>
    public static OutsidePackers? Find(string? folder)
    {
        var where = Path.GetFullPath(folder ?? Path.Combine(AppContext.BaseDirectory, "packers"));
        if (!File.Exists(Path.Combine(where, Script)))
            throw new UsageException($"There is no {Script} in {where}.");
        if (!HasNode())
            Console.WriteLine("The rectangle packers are left out: there is no program 'node'. Install Node.js 20 or later.");
        else if (!Directory.Exists(Path.Combine(where, "node_modules")))
            Console.WriteLine($"The rectangle packers are left out: they are not installed. Run 'npm ci' in {where}.");
        else
            return new(where);
        return null;
    }

    /// <summary>Hands over the problem's one stock and its items; what comes back is to be checked.</summary>
    public IReadOnlyList<PackerAnswer> Pack(SheetProblem problem, double seconds)
    {
        var job = new
        {
            sheet = new[] { problem.Stocks[0].Dx, problem.Stocks[0].Dy },
            seconds,
            items = problem.Items.Select(item => new object[] { item.Dx, item.Dy, item.Demand, item.CanTurn }),
        };
        return Read(Run(JsonSerializer.Serialize(job)));
    }

    private string Run(string job)
    {
        using var node = Process.Start(Node(Path.Combine(folder, Script)))!;
        node.StandardInput.Write(job);
        node.StandardInput.Close();
        var answer = node.StandardOutput.ReadToEnd();
        node.WaitForExit();
        if (node.ExitCode == 0)
            return answer;
        throw new InvalidOperationException($"{Script} ended with {node.ExitCode}; its reason stands above.");
    }

    private static List<PackerAnswer> Read(string text)
    {
        using var document = JsonDocument.Parse(text);
        return
        [
            .. document
                .RootElement.EnumerateArray()
                .Select(packer => new PackerAnswer(
                    packer.GetProperty("name").GetString()!,
                    packer.GetProperty("seconds").GetDouble(),
                    new([.. packer.GetProperty("sheets").EnumerateArray().Select(Sheet)])
                )),
        ];
    }

    private static List<Placed> Sheet(JsonElement sheet) =>
        [
            .. sheet
                .EnumerateArray()
                .Select(piece => new Placed(
                    piece[0].GetInt32(),
                    piece[1].GetInt64(),
                    piece[2].GetInt64(),
                    piece[3].GetInt64(),
                    piece[4].GetInt64()
                )),
        ];

    private static bool HasNode()
    {
        try
        {
            using var node = Process.Start(Node("--version"))!;
            node.StandardInput.Close();
            node.StandardOutput.ReadToEnd();
            node.WaitForExit();
            return node.ExitCode == 0;
        }
        catch (Win32Exception)
        {
            return false;
        }
    }

    private static ProcessStartInfo Node(string word) =>
        new("node", [word]) { RedirectStandardInput = true, RedirectStandardOutput = true };
}
