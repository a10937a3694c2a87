namespace ShopPlanner.Services.Storage;

/// <summary>Passed before each step that changes files, in their order. A test stops there; the program does nothing.</summary>
internal class StorageSteps
{
    /// <summary>A step is about to be done.</summary>
    /// <param name="step">Its name, for a person who reads a test.</param>
    public virtual void Reach(string step) { }
}
