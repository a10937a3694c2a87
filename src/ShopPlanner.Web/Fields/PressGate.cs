using ShopPlanner.Services.Common;

namespace ShopPlanner.Web.Fields;

/// <summary>Lets a press through once. A repetition (a double click, an event sent again) finds the form as the first one left
/// it, closed or emptied, so it must not reach the form's handler; a press that was refused may be tried again.</summary>
internal sealed class PressGate
{
    private Guid? underWay,
        done;

    /// <summary>Rises whenever a press has its answer: the browser lets the button be pressed again.</summary>
    public int Answers { get; private set; }

    /// <summary>Hands a press to its handler, unless the same one is under way or done.</summary>
    /// <param name="id">The same for every repetition of one press.</param>
    /// <param name="act">Does it, and says whether it was done.</param>
    /// <returns>Whether this very press was done now.</returns>
    public async Task<bool> PassAsync(Guid id, Func<CommandPress, Task> act)
    {
        if (underWay == id)
            return false;
        try
        {
            return done != id && await ActAsync(id, act);
        }
        finally
        {
            Answers++;
        }
    }

    private async Task<bool> ActAsync(Guid id, Func<CommandPress, Task> act)
    {
        underWay = id;
        try
        {
            var press = new CommandPress(new CommandId(id));
            await act(press);
            if (press.IsDone)
                done = id;
            return press.IsDone;
        }
        finally
        {
            if (underWay == id)
                underWay = null;
        }
    }
}
