using System.Collections.Immutable;
using ShopPlanner.Drawing;

namespace ShopPlanner.Packets.Model;

/// <summary>How a project's piece is built and finished, as the packet shows it.</summary>
/// <param name="Name">The project's.</param>
/// <param name="AnyOrder">Sentences about what can be built in any order.</param>
/// <param name="Build">Steps in the order to do them.</param>
/// <param name="Finish">Those of the finish.</param>
/// <param name="Areas">What is finished, part by part.</param>
/// <param name="Buy">What the finish uses up.</param>
public sealed record PacketWork(
    string Name,
    ImmutableArray<string> AnyOrder,
    ImmutableArray<PacketStep> Build,
    ImmutableArray<PacketStep> Finish,
    ImmutableArray<PacketArea> Areas,
    ImmutableArray<PacketHardware> Buy
);

/// <summary>A step of the work.</summary>
/// <param name="Number">In its list.</param>
/// <param name="Phase">Where in the work it belongs, in words.</param>
/// <param name="Title">A few words.</param>
/// <param name="Marks">Of the copies that it handles.</param>
/// <param name="Says">What to do, a sentence each.</param>
/// <param name="Figures">What is set: <c>Fence to bit: 3/8″</c>.</param>
/// <param name="Facts">Fasteners, wait: a line each.</param>
/// <param name="Check">What to measure, and what to do when it is off; empty for nothing.</param>
/// <param name="Cautions">Where it can hurt.</param>
/// <param name="Note">The builder's; may be empty.</param>
/// <param name="Picture">The parts that it handles, in points, as <c>WorkSheets</c> draws them; null for none.</param>
public sealed record PacketStep(
    int Number,
    string Phase,
    string Title,
    ImmutableArray<string> Marks,
    ImmutableArray<string> Says,
    ImmutableArray<string> Figures,
    ImmutableArray<string> Facts,
    string Check,
    ImmutableArray<string> Cautions,
    string Note,
    LineDrawing? Picture
)
{
    /// <summary>Whether it is work on single parts: what is set is printed with the machines.</summary>
    public bool IsOnParts { get; init; }

    /// <summary>The tool, and which side of the parts is worked: a line each.</summary>
    public ImmutableArray<string> Setup { get; init; } = [];

    /// <summary>How long to wait after it: <c>60 min</c>; empty for no wait.</summary>
    public string Wait { get; init; } = "";
}

/// <summary>The area of a part's copies that is finished.</summary>
/// <param name="Part">Its letter.</param>
/// <param name="Name">What people call it; may be empty.</param>
/// <param name="Area">With its unit.</param>
/// <param name="BeforeAssembly">Of that, what is finished before assembly; empty for nothing.</param>
public sealed record PacketArea(string Part, string Name, string Area, string BeforeAssembly);
