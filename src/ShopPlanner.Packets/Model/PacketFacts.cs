using System.Collections.Immutable;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Packets.Model;

/// <summary>What a piece of furniture takes, for the cover and the cost sheet.</summary>
/// <param name="Name">The project's.</param>
/// <param name="Outside">Width × height × depth with the unit; empty where there is no design.</param>
/// <param name="Wood">Parts, as they are cut: <c>31 parts, 42 sq ft of sheets, 12 board feet</c>.</param>
/// <param name="WoodCost">Its share of boards and sheets; null where no plan says.</param>
/// <param name="WorkMinutes">Time at work after the cuts; 0 where it is not known.</param>
/// <param name="WaitMinutes">Time that glue and finish take; 0 where it is not known.</param>
public sealed record PacketTakes(string Name, string Outside, string Wood, Money? WoodCost, int WorkMinutes, int WaitMinutes);

/// <summary>Something to buy besides boards and sheets.</summary>
/// <param name="Project">For which piece.</param>
/// <param name="Name">As asked for in a store.</param>
/// <param name="Amount">How much; may be empty.</param>
/// <param name="Aisle">Where it is found.</param>
public sealed record PacketSupply(string Project, string Name, string Amount, SupplyAisle Aisle)
{
    /// <summary>Whether it is bought.</summary>
    public bool IsBought { get; init; }

    /// <summary>Of the whole line; null where nobody said.</summary>
    public Money? Price { get; init; }
}

/// <summary>Parts of a store (common practice).</summary>
public enum SupplyAisle
{
    /// <summary>Screws, hinges, glue.</summary>
    Hardware,

    /// <summary>Paint, brushes, abrasives.</summary>
    Finish,
}

/// <summary>A figure of the workings.</summary>
/// <param name="Number">By which later ones refer to it, from 1.</param>
/// <param name="Name">What it is.</param>
/// <param name="Value">As shown.</param>
/// <param name="How">The formula in words and with its numbers; empty for a figure that was given.</param>
/// <param name="Source">Where the rule comes from.</param>
/// <param name="From">Numbers of the figures that went into it.</param>
public sealed record PacketWorking(int Number, string Name, string Value, string How, string Source, ImmutableArray<int> From);
