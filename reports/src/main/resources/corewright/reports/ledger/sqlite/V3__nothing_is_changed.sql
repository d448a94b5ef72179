CREATE TRIGGER event_is_never_changed BEFORE UPDATE ON event
BEGIN SELECT RAISE(ABORT, 'events are never changed'); END;
CREATE TRIGGER event_is_never_removed BEFORE DELETE ON event
BEGIN SELECT RAISE(ABORT, 'events are never removed'); END;
CREATE TRIGGER content_is_never_changed BEFORE UPDATE ON content
BEGIN SELECT RAISE(ABORT, 'stored texts are never changed'); END;
CREATE TRIGGER content_is_never_removed BEFORE DELETE ON content
BEGIN SELECT RAISE(ABORT, 'stored texts are never removed'); END;
