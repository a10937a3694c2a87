using System.Globalization;
using System.Text;
using ShopPlanner.Core.Making;
using ShopPlanner.Core.Making.Model;

namespace ShopPlanner.Benchmarks;

/// <summary><c>steps [--runs N]</c>: plans the work on the built-in designs and on those that are made up, warm, and prints the
/// mean of so many runs.</summary>
public static class StepsCommand
{
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
        var piece = DesignsCommand.WorkOut(DesignsCommand.Read(name, json));
        var mean = DesignsCommand.Mean(() => WorkPlanner.Of(piece, WorkChoices.Usual), runs);
        var (pieces, steps) = (piece.Parts.Sum(part => part.Quantity), WorkPlanner.Of(piece, WorkChoices.Usual).Steps.Length);
        return string.Create(
            CultureInfo.InvariantCulture,
            $"| {name} | {pieces} | {piece.Joints.Length} | {steps} | {mean:0.0} |"
        );
    }
}
