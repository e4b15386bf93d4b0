using System.Collections.Concurrent;

namespace ToiletAidTui.Batch;

/// <summary>Work on several cores whose results come out in the order of the input, with a bounded number of items under way.</summary>
/// <typeparam name="TIn">What is worked on.</typeparam>
/// <typeparam name="TOut">What comes out.</typeparam>
#pragma warning disable CA1001 // A reader that waits for input that never comes still holds them when the run ends; nothing in them outlives the process.
internal sealed class OrderedWork<TIn, TOut>
#pragma warning restore CA1001
{
    /// <summary>Items under way for each thread: enough that one slow item does not make the others wait.</summary>
    private const int WindowPerJob = 16;

    private const int BytesPerPlace = 32 * 1024;

    private readonly int _jobs;
    private readonly int _window;
    private readonly Func<TIn, int> _size;
    private readonly SemaphoreSlim _room;
    private readonly ConcurrentQueue<Slot> _queue = new();
    private readonly BlockingCollection<Slot> _todo = [];
    private readonly CancellationTokenSource _stop = new();
    private readonly BlockingCollection<Slot> _inOrder;
    private Exception? _readFault;

    /// <summary>Makes ready.</summary>
    /// <param name="jobs">Threads that work, 1 or more.</param>
    /// <param name="size">Bytes that an item holds, so that large ones count as several.</param>
    internal OrderedWork(int jobs, Func<TIn, int> size)
    {
        (_jobs, _size, _window) = (jobs, size, jobs * WindowPerJob);
        _room = new(_window);
        _inOrder = new(_queue);
    }

    /// <summary>Takes in nothing more; what is under way is finished. May be called from any thread.</summary>
    internal void Stop()
    {
        _stop.Cancel();
        _inOrder.CompleteAdding();
    }

    /// <summary>Does the work.</summary>
    /// <param name="source">The items; read on a thread of its own, which is left behind when it waits for input that never comes.</param>
    /// <param name="makeWorker">Called once on each working thread.</param>
    /// <param name="write">Called on this thread with each result in order.</param>
    /// <param name="lull">Called on this thread when the next result is not ready yet.</param>
    internal void Run(IEnumerable<TIn> source, Func<Func<TIn, TOut>> makeWorker, Action<TOut> write, Action lull)
    {
        Start(() => Feed(source, makeWorker), "reader");
        try
        {
            foreach (var slot in _inOrder.GetConsumingEnumerable())
            {
                write(slot.Result.Task.GetAwaiter().GetResult());
                _room.Release(slot.Places);
                if (!_queue.TryPeek(out var next) || !next.Result.Task.IsCompleted)
                {
                    lull();
                }
            }
        }
        finally
        {
            Stop();
            _todo.CompleteAdding();
        }

        if (_readFault is not null)
        {
            throw new IOException("the input ended too soon", _readFault);
        }
    }

    private void Feed(IEnumerable<TIn> source, Func<Func<TIn, TOut>> makeWorker)
    {
        int started = 0;
        try
        {
            foreach (var item in source)
            {
                var slot = new Slot(item, Math.Clamp(1 + (_size(item) / BytesPerPlace), 1, _window));
                for (int place = 0; place < slot.Places; place++)
                {
                    _room.Wait(_stop.Token);
                }

                _inOrder.Add(slot, _stop.Token);
                _todo.Add(slot);
                if (started < _jobs)
                {
                    started++;
                    Start(() => Work(makeWorker), "worker");
                }
            }
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            _readFault = e;
        }
        catch (Exception e) when (_stop.IsCancellationRequested && e is OperationCanceledException or InvalidOperationException)
        {
            // Stopped: what was not taken in is not lost, the run can be resumed from there.
        }

        _inOrder.CompleteAdding();
    }

    private void Work(Func<Func<TIn, TOut>> makeWorker)
    {
        var work = default(Func<TIn, TOut>);
        foreach (var slot in _todo.GetConsumingEnumerable())
        {
#pragma warning disable CA1031 // It is thrown again on the thread that waits for the result.
            try
            {
                work ??= makeWorker();
                slot.Result.SetResult(work(slot.Item));
            }
            catch (Exception e)
            {
                slot.Result.SetException(e);
            }
#pragma warning restore CA1031
        }
    }

    private static void Start(ThreadStart body, string name) => new Thread(body) { IsBackground = true, Name = name }.Start();

    private sealed record Slot(TIn Item, int Places)
    {
        internal TaskCompletionSource<TOut> Result { get; } = new(TaskCreationOptions.RunContinuationsAsynchronously);
    }
}
