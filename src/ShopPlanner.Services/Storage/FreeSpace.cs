namespace ShopPlanner.Services.Storage;

/// <summary>Asks how much room a disk has left.</summary>
internal class FreeSpace
{
    /// <summary>Returns the bytes that this user may still write on the disk that holds a folder.</summary>
    public virtual long Of(string folder) => new DriveInfo(folder).AvailableFreeSpace;
}
