namespace ShopPlanner.Services.Common;

/// <summary>
/// The id of a command, made by the device that sends it. A command sent twice with one id, by a double click or a connection
/// that broke, is done once; the second time it is answered with what the first one made, as it is now, or as missing when it was
/// deleted since. A command that was refused may be sent again, changed, with the same id. An empty id, or one that was used to
/// ask for something else, is a fault. Ids are known for 90 days.
/// </summary>
/// <param name="Value">Never given twice; not empty.</param>
public readonly record struct CommandId(Guid Value)
{
    /// <summary>Its place among all that its sender says; null where nobody counts. Of two commands of one sender about the same
    /// thing the later one holds, in whatever order they come.</summary>
    public CommandTurn? Turn { get; init; }

    /// <summary>Returns an id that no command has yet.</summary>
    public static CommandId New() => new(Guid.CreateVersion7());

    /// <inheritdoc />
    public override string ToString() => Value.ToString();
}

/// <summary>The place of a command among those of one sender.</summary>
/// <param name="Sender">A browser that keeps commands until they are sent; not empty.</param>
/// <param name="Number">Rises with each of its commands.</param>
public readonly record struct CommandTurn(Guid Sender, long Number);
