using Microsoft.AspNetCore.Components;

namespace ShopPlanner.Web.Fields;

/// <summary>What the browser sends of a field: fields.js raises it, once for each text that is to be kept.</summary>
public sealed class TypedEventArgs : EventArgs
{
    /// <summary>The text; <c>true</c> or <c>false</c> of a box to tick, the chosen option of a choice.</summary>
    public string Value { get; set; } = "";

    /// <summary>What was stored when the typing began.</summary>
    public string Base { get; set; } = "";

    /// <summary>Rises with every change in one browser page, so that an older answer never wins over a newer text.</summary>
    public long Seq { get; set; }

    /// <summary>Whether texts of other fields of the same line follow, to be stored together with this one.</summary>
    public bool More { get; set; }
}

/// <summary>What the browser sends when something is to be done once.</summary>
public sealed class CommandEventArgs : EventArgs
{
    /// <summary>Made by the browser; the same for every repetition of one press.</summary>
    public Guid Id { get; set; }
}

/// <summary>Names the events of fields.js for Razor.</summary>
[EventHandler("ontyped", typeof(TypedEventArgs), enableStopPropagation: true, enablePreventDefault: true)]
[EventHandler("oncommand", typeof(CommandEventArgs), enableStopPropagation: true, enablePreventDefault: true)]
public static class EventHandlers;
