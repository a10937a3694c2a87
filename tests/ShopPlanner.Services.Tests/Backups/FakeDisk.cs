using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Tests.Backups;

/// <summary>A disk that has as much room as a test says.</summary>
internal sealed class FakeDisk : FreeSpace
{
    public long Free { get; set; }

    public override long Of(string folder) => Free;
}
