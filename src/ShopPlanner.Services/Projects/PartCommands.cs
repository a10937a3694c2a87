using ShopPlanner.Services.Common;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Projects;

/// <summary>Commands that add rows to a parts list.</summary>
internal static class PartCommands
{
    /// <summary>Adds rows, once for each command; a command that was done before is answered with the list as it is.</summary>
    /// <param name="commands">What was asked before.</param>
    /// <param name="projectId">The project.</param>
    /// <param name="command">Its id.</param>
    /// <param name="asked">What it asks for.</param>
    /// <param name="add">Adds the rows.</param>
    /// <param name="cancel">Stops it before it is saved.</param>
    /// <param name="isFile">Whether the rows come from a file, which may be large.</param>
    public static Task<Outcome<PartSheet>> AddOnceAsync(
        this ShopCommands commands,
        Guid projectId,
        CommandId command,
        string asked,
        Func<ShopContext, Task<Outcome<PartSheet>>> add,
        CancellationToken cancel,
        bool isFile = false
    ) =>
        commands.RunAsync(
            new Making<PartSheet>(command, asked)
            {
                Make = add,
                Made = sheet => CommandTexts.Text(sheet.ProjectId),
                Find = (db, _) => PartRows.SheetAsync(db, projectId, cancel),
                NeedsRoom = isFile,
                What = "project",
            },
            cancel
        );
}
