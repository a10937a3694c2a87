using System.Diagnostics;
using System.Globalization;
using System.Text;
using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making;
using ShopPlanner.Core.Making.Model;

namespace ShopPlanner.Benchmarks;

/// <summary><c>steps [--runs N]</c>: plans the work on the built-in designs and on those that are made up, warm, and prints the
/// mean of so many runs.</summary>
public static class StepsCommand
{
    private const int WarmRuns = 5;

    private static readonly Dictionary<string, string> Nothing = [];

    public static int Run(IReadOnlyList<string> words)
    {
        var runs = Options.ParseWithoutPath(words, ["runs"], []).Whole("runs", 20);
        Console.WriteLine("| design | pieces | joints | steps | ms |");
        Console.WriteLine("| --- | --- | --- | --- | --- |");
        foreach (var (name, text) in DesignsCommand.BuiltIn().Concat(MadeUpDesigns.All()))
            Console.WriteLine(Row(name, Encoding.UTF8.GetBytes(text), runs));
        return 0;
    }

    private static string Row(string name, byte[] json, int runs)
    {
        var document = DesignJson.Read(json).Document ?? throw new InvalidOperationException(name + " cannot be read");
        var piece =
            DesignEvaluator.Evaluate(document, Nothing).Piece ?? throw new InvalidOperationException(name + " has faults");
        for (var i = 0; i < WarmRuns; i++)
            WorkPlanner.Of(piece, WorkChoices.Usual);
        var watch = Stopwatch.StartNew();
        for (var i = 0; i < runs; i++)
            WorkPlanner.Of(piece, WorkChoices.Usual);
        var (mean, steps) = (watch.Elapsed.TotalMilliseconds / runs, WorkPlanner.Of(piece, WorkChoices.Usual).Steps.Length);
        return string.Create(
            CultureInfo.InvariantCulture,
            $"| {name} | {Copies(piece)} | {piece.Joints.Length} | {steps} | {mean:0.0} |"
        );
    }

    private static int Copies(Piece piece) => piece.Parts.Sum(part => part.Copies.Length);
}
